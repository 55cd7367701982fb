import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-reading-grade',
  severity: 'note',
  acceptable: false,
  title: 'Fact sheet that is hard to read',
  meaning:
    'A fact sheet is for neighbours, so the aim is the 8th grade of school. The grade is that of Flesch and Kincaid (Kincaid and others, 1975), from the words in a sentence and the syllables in a word, of the author’s own sentences: headings, tables and quotations are left out, and each number counts as a short word. Sheets in other languages than English get no grade, because the formulas for them that we know of are disputed.',
  example: 'reads at grade 10.2; aim at 8 or lower: shorter sentences, shorter words',
};
export default rule;
