import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-unknown-attribute',
  severity: 'error',
  acceptable: false,
  title: 'Attribute that a component does not have',
  meaning:
    'What a component shows is said by its attributes. One that it does not have would be passed over, and with it what the author meant.',
  example: 'Value has no attribute "pr"; did you mean "per"?',
};
export default rule;
