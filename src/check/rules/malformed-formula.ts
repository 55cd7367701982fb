import { say } from '../../model/say.ts';
import { knownSalt, knownSalts } from '../../compute/nutrients/known-salts.ts';
import { parseFormula } from '../../compute/nutrients/parse-formula.ts';
import type { Facts } from '../facts.ts';
import { nearest } from '../nearest.ts';
import type { Report, Rule } from '../rule.ts';
import { escapeUnseen, showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'malformed-formula',
  severity: 'error',
  acceptable: false,
  title: 'Malformed chemical formula',
  meaning:
    "A salt's formula tells everything that is in it, so one that cannot be read leaves the recipe unreckoned. Elements begin with a capital, figures stand behind what they count, and a dot parts the salt from its water.",
  example: '"mgso4" is no chemical formula; did you mean "MgSO4"?',
  check,
};
export default rule;

const formulas = knownSalts.flatMap((salt) => salt.formulas);

function check({ metadata }: Facts, report: Report): void {
  for (const [index, { name, formula }] of (metadata.draft.nutrients?.salts ?? []).entries()) {
    if (formula === undefined) continue;
    const read = parseFormula(formula);
    if (!('problem' in read)) continue;
    const best = nearest(formula, formulas) ?? knownSalt(name)?.formulas[0] ?? null;
    const values = { formula: showText(formula), problem: escapeUnseen(read.problem) };
    const message =
      best === null
        ? say(
            '{formula} is no chemical formula: it {problem}; write it such as MgSO4.7H2O or Ca(NO3)2.4H2O',
            values,
          )
        : say('{formula} is no chemical formula: it {problem}; did you mean "{near}"?', {
            ...values,
            near: best,
          });
    report(rule, {
      file: 'trial.yaml',
      place: metadata.place(['nutrients', 'salts', index, 'formula']),
      found: formula,
      expected: best,
      message,
    });
  }
}
