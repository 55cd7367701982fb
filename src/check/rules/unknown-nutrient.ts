import { nearestKey } from '../../compute/nutrients/named-analysis.ts';
import { labelKeys, waterKeys } from '../../model/nutrient-keys.ts';
import { say } from '../../model/say.ts';
import type { Path } from '../../read/yaml.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-nutrient',
  severity: 'error',
  acceptable: false,
  title: 'Unknown nutrient',
  meaning:
    "A name in a label's analysis or in the water's that is not known would be passed over, and what it gives with it. Elements stand for themselves, oxides as labels write them (P2O5, K2O, CaO, MgO), forms of nitrogen as NO3_N, NH4_N and urea_N.",
  example: '"P205" is no nutrient of a label; did you mean "P2O5"?',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const { water = {}, salts = [] } = metadata.draft.nutrients ?? {};
  checkKeys(water, waterKeys, ofWater, ['nutrients', 'water']);
  for (const [index, { percent = {} }] of salts.entries())
    checkKeys(percent, labelKeys, ofLabel, ['nutrients', 'salts', index, 'percent']);

  function checkKeys(
    analysis: Readonly<Record<string, number>>,
    known: readonly string[],
    messageOf: typeof ofWater,
    path: Path,
  ): void {
    for (const key of Object.keys(analysis)) {
      if (known.includes(key)) continue;
      const best = nearestKey(key, known);
      report(rule, {
        file: 'trial.yaml',
        place: metadata.keyPlace([...path, key]),
        found: key,
        expected: best,
        message: messageOf(showText(key), best, known.join(', ')),
      });
    }
  }
}

function ofWater(key: string, name: string | null, names: string): string {
  return name === null
    ? say("{key} is no nutrient of the water's analysis; known are {names}", { key, names })
    : say('{key} is no nutrient of the water\'s analysis; did you mean "{name}"?', { key, name });
}

function ofLabel(key: string, name: string | null, names: string): string {
  return name === null
    ? say('{key} is no nutrient of a label; known are {names}', { key, names })
    : say('{key} is no nutrient of a label; did you mean "{name}"?', { key, name });
}
