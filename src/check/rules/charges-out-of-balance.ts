import type { Facts } from '../facts.ts';
import { recipeWarnings } from '../recipe-warnings.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'charges-out-of-balance',
  severity: 'warning',
  acceptable: true,
  title: 'Cations and anions out of balance',
  meaning:
    'What is dissolved carries as many positive charges as negative. A recipe whose cations and anions differ by more than 10 in a hundred has a wrong amount, a wrong figure of a label or of the water, or something left out. It is reckoned only where every form of nitrogen is told.',
  example: 'more anions than cations: 2.6 against 7.1 meq/L',
  check,
};
export default rule;

function check(facts: Facts, report: Report): void {
  for (const { text, path } of recipeWarnings(facts, 'charges'))
    report(rule, { file: 'trial.yaml', place: facts.metadata.place(path), message: text });
}
