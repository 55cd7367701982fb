import type { Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-typed-number',
  severity: 'warning',
  acceptable: false,
  title: 'Typed number that no finding bears out',
  meaning:
    'A weight, a yield by area or a percentage that was typed by hand should be one that the trial found: some finding, of the treatment that the sentence names and of the kind that it speaks of, must round to it at the digits typed, ounces and pounds converted exactly. "About 150 g" is held to 10 g, "over 120 g" needs a finding not far above. Doses (g/L, grams of a salt), sizes of bags and cups, steps of a scale, prices by weight, and percentages of humidity, shade, strength and the like are left alone, as is what is quoted. A component in place of the number stays right when the data are corrected.',
  example:
    'no finding rounds to "152 g": the nearest is 147.3 g, the mean per plant set of Slate Egret; write that, or <Value of="mean" where="cultivar=slate-egret" />',
};
export default rule;
