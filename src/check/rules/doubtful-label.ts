import type { Facts } from '../facts.ts';
import { recipeWarnings } from '../recipe-warnings.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'doubtful-label',
  severity: 'warning',
  acceptable: true,
  title: 'Label that contradicts itself',
  meaning:
    "A label whose parts exceed the whole, that gives one element twice and differently, or that disagrees with the salt's formula is mistyped, or is of another hydrate.",
  example: 'the label adds up to 110 % of the weight of the salt',
  check,
};
export default rule;

function check(facts: Facts, report: Report): void {
  for (const { text, path } of recipeWarnings(facts, 'label'))
    report(rule, { file: 'trial.yaml', place: facts.metadata.place(path), message: text });
}
