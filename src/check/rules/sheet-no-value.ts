import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-no-value',
  severity: 'error',
  acceptable: false,
  title: 'Number that there is not',
  meaning:
    'The trial does not give the number that is asked for. A sheet that leaves a gap, or says 0, would mislead; what stands in its place is the reason.',
  example: 'the mean per container of Slate Egret is not known: the weight of a plant is unknown',
};
export default rule;
