import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-long-sentence',
  severity: 'note',
  acceptable: false,
  title: 'Long sentence in a fact sheet',
  meaning:
    'A sentence of more than 25 words is hard to follow on first reading, in any language. A number or a name that a component prints counts as one word.',
  example: 'this sentence has 34 words; one of 25 or fewer is easier to follow: make it two',
};
export default rule;
