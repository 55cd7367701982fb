import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-file-name',
  severity: 'error',
  acceptable: false,
  title: 'Fact sheet with a name that is not read',
  meaning:
    'The language of a fact sheet is read from its name, and its address too. A name of another form would be passed over.',
  example:
    '"factsheet.spanish.mdx" is no name of a fact sheet; write the language as a tag of two letters, such as factsheet.es.mdx',
};
export default rule;
