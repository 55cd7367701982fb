import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-missing-attribute',
  severity: 'error',
  acceptable: false,
  title: 'Attribute left out',
  meaning: 'Without the attribute the program would have to guess what is meant.',
  example: 'Photo needs the attribute file, such as file="photos/day-30.jpg"',
};
export default rule;
