import { say } from '../../model/say.ts';
import { isWeight } from '../../model/units.ts';
import type { Facts } from '../facts.ts';
import { reportInOne } from '../containers-in-one.ts';
import type { Finding, Report, Rule } from '../rule.ts';
import { areaOf } from './unlikely-size.ts';

const rule: Rule = {
  rule: 'unlikely-yield',
  severity: 'warning',
  acceptable: true,
  title: 'More than can grow on the area',
  meaning:
    'What one cut weighed comes to more on a square metre than plants bear. The unit of the weights or of the cover is probably another.',
  example: 'the harvest of T1 at cut 1 comes to 2300 kg on a square metre of its cover; is a unit wrong?',
  check,
};
export default rule;

/** No crop of a small trial bears as many kg/m2 at one cut; common practice, no source. */
const most = 50;

function check({ metadata, harvest }: Facts, report: Report): void {
  const [primary] = metadata.draft.variables ?? [];
  if (harvest === null || primary === undefined || !isWeight(primary.unit)) return;
  const odd: Finding[] = [];
  for (const [index, { id, cover }] of (metadata.draft.containers ?? []).entries()) {
    if (cover === undefined) continue;
    const grams = new Map<number, number>();
    for (const { container, cut, values } of harvest.records) {
      if (container === id) grams.set(cut, (grams.get(cut) ?? 0) + (values[primary.id] ?? 0));
    }
    const [cut, heaviest] = [...grams].sort(([, a], [, b]) => b - a)[0] ?? [1, 0];
    const kilograms = heaviest / 1000 / areaOf(cover);
    if (kilograms <= most) continue;
    const shown = Number(kilograms.toPrecision(2));
    const message = say(
      'the harvest of {container} at cut {cut} comes to {kilograms} kg on a square metre of its cover; is the unit of the weights or of the cover wrong?',
      { container: id, cut, kilograms: shown },
    );
    const place = metadata.place(['containers', index, 'cover']);
    odd.push({ file: 'trial.yaml', place, found: `${String(shown)} kg/m2`, message, where: id });
  }
  reportInOne(report, rule, odd, metadata);
}
