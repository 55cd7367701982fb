import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'salt-twice',
  severity: 'warning',
  acceptable: true,
  title: 'The same salt twice',
  meaning:
    'A recipe names a salt twice with the same amount and the same stock: a line was copied, and all that it brings would be counted twice.',
  example: '"Calcium nitrate" stands twice with 0.66 g in a litre; take one away',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const seen = new Set<string>();
  for (const [index, salt] of (metadata.draft.nutrients?.salts ?? []).entries()) {
    const { name, grams_per_litre: grams, stock } = salt;
    const key = JSON.stringify([name.trim().toLowerCase(), grams, stock ?? null]);
    if (!seen.has(key)) {
      seen.add(key);
      continue;
    }
    const message = say(
      '{name} stands twice with {grams} g in a litre; take one away, or correct its name or amount',
      {
        name: showText(name),
        grams,
      },
    );
    const place = metadata.place(['nutrients', 'salts', index, 'name']);
    report(rule, { file: 'trial.yaml', place, found: name, message });
  }
}
