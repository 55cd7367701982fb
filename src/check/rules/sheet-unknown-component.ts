import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-unknown-component',
  severity: 'error',
  acceptable: false,
  title: 'Component that there is not',
  meaning:
    'A component is a part that the program fills in, such as a value or a figure. One that it does not have would leave a gap in the sheet.',
  example: 'there is no component "Valeu"; did you mean "Value"?',
};
export default rule;
