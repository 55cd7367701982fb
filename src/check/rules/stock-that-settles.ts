import type { Facts } from '../facts.ts';
import { recipeWarnings } from '../recipe-warnings.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'stock-that-settles',
  severity: 'warning',
  acceptable: true,
  title: 'Salts that settle in one stock',
  meaning:
    'Calcium comes down with sulfate as gypsum and with phosphate as calcium phosphate where both are strong, so that the plants get less of each than the recipe says. They go into stocks of their own.',
  example: 'Calcium (Calcium nitrate) and sulfate (Magnesium sulfate) share stock A',
  check,
};
export default rule;

function check(facts: Facts, report: Report): void {
  for (const { text, path } of recipeWarnings(facts, 'settles'))
    report(rule, { file: 'trial.yaml', place: facts.metadata.place(path), message: text });
}
