import type { Facts } from '../facts.ts';
import { recipeWarnings } from '../recipe-warnings.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'stock-beyond-solubility',
  severity: 'warning',
  acceptable: true,
  title: 'More salt in a stock than dissolves',
  meaning:
    'What does not dissolve stays at the bottom of the stock, and the solution gets less of it than the recipe says. Solubilities are those of each salt by itself in water at 20 C.',
  example: 'Potassium sulfate will not all dissolve: 120 g in a litre of stock B',
  check,
};
export default rule;

function check(facts: Facts, report: Report): void {
  for (const { text, path } of recipeWarnings(facts, 'beyond solubility'))
    report(rule, { file: 'trial.yaml', place: facts.metadata.place(path), message: text });
}
