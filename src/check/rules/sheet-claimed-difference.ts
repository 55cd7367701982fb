import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-claimed-difference',
  severity: 'warning',
  acceptable: false,
  title: 'Difference claimed that the trial does not show',
  meaning:
    'Words such as "outyielded", "better than" or "significantly" claim a difference. Where the design tested nothing, or where the interval of the difference between the two that are named holds zero, the trial does not bear that out, and a neighbour would be misled. A claim that is taken back ("did not outyield", "no heavier"), asked ("whether"), quoted, or made of what was not weighed (taste, looks) is left alone. Of more treatments than are named, the claim must hold for the check where the sentence speaks of it, for at least one of them, or for all where it says "heaviest".',
  example:
    '"outyielded" claims a difference that this trial did not test; write "Slate Egret gave 14 g a head more than Cobalt Wren in this trial, which cannot say whether it would again"',
};
export default rule;
