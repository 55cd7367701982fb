import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-misplaced',
  severity: 'error',
  acceptable: false,
  title: 'Component in the wrong place',
  meaning:
    'A value stands in a sentence; a figure or a table stands on lines of its own, with an empty line before and after it, and not within a list or another component.',
  example: 'PositionMap stands on a line of its own, with an empty line before and after it',
};
export default rule;
