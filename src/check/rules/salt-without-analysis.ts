import { say } from '../../model/say.ts';
import { knownSalt } from '../../compute/nutrients/known-salts.ts';
import type { Facts } from '../facts.ts';
import { isRecipeWhole } from '../recipe-warnings.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'salt-without-analysis',
  severity: 'warning',
  acceptable: true,
  title: 'Salt of which nothing is known',
  meaning:
    'What a salt brings follows from the percentages on its label or from its formula. With neither, what the solution holds of each nutrient is not known, and the recipe stands without numbers.',
  example: '"Calcium nitrate" has neither percent nor formula; copy the percentages from its label',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  // A percent or a formula that was refused is there all the same.
  if (!isRecipeWhole(metadata)) return;
  for (const [index, salt] of (metadata.draft.nutrients?.salts ?? []).entries()) {
    if (salt.percent !== undefined || salt.formula !== undefined) continue;
    const formula = knownSalt(salt.name)?.formulas[0];
    const name = showText(salt.name);
    const message =
      formula === undefined
        ? say(
            '{name} has neither percent nor formula, so that nothing of what it brings is known; copy the percentages from its label, such as percent: {N: 15.5, Ca: 19}',
            { name },
          )
        : say(
            '{name} has neither percent nor formula, so that nothing of what it brings is known; copy the percentages from its label, or write the formula that stands on it, such as {formula}',
            { name, formula },
          );
    const place = metadata.place(['nutrients', 'salts', index, 'name']);
    report(rule, { file: 'trial.yaml', place, found: salt.name, message });
  }
}
