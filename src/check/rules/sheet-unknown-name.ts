import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-unknown-name',
  severity: 'error',
  acceptable: false,
  title: 'Name that the trial does not have',
  meaning:
    'A value, a figure or a citation is asked of something that there is not: a trial, a treatment, a container, a photograph or a crop. Or a link leads to a page, a heading or a file that there is not.',
  example: 'the trial has no factor "cultvar"; did you mean "cultivar"?',
};
export default rule;
