import { say } from '../../model/say.ts';
import type { Position } from '../../model/trial.ts';
import type { Facts, Harvest } from '../facts.ts';
import { reportInOne } from '../containers-in-one.ts';
import type { Finding, Report, Rule } from '../rule.ts';
import { likelyWeight } from '../likely-weight.ts';
import { recordPlace } from '../places.ts';
import { toGrams } from '../to-grams.ts';
import {
  inGrams,
  isBeyondRounding,
  mostByRounding,
  partsOf,
  stepInGrams,
  swappedDigits,
  weighedVariable,
} from '../totals.ts';
import { lookForRows } from './missing-row.ts';

const rule: Rule = {
  rule: 'container-total',
  severity: 'error',
  acceptable: true,
  title: 'Total of a container differs from its plants',
  meaning:
    'The crate was weighed apart from the plants, so the two check each other: they may differ by rounding, half a step of the scale for each part and for the total, and by no more.',
  example: 'T2 was weighed at 1862 g, but its 12 plants sum to 1826 g',
  check,
};
export default rule;

function check({ metadata, harvest, layout }: Facts, report: Report): void {
  const variable = weighedVariable(metadata.draft.variables);
  if (variable === null || harvest === null || layout === null || !harvest.complete || !layout.complete)
    return;
  if (!(metadata.draft.containers ?? []).some((one) => one.weighed_total !== undefined)) return;
  if (metadata.lost.has('variables.resolution')) return;
  const uncounted = withoutEveryPlantOnce(harvest, layout.positions, metadata.draft.dates?.cuts?.length ?? 1);
  const isUnsure = (id: string): boolean => harvest.unsure.has(id) || harvest.doubted.has(id);
  const byContainer = Map.groupBy(harvest.records, ({ container }) => container);
  const odd: Finding[] = [];
  const times: number[] = [];
  for (const [index, { id, weighed_total: total }] of (metadata.draft.containers ?? []).entries()) {
    const records = byContainer.get(id);
    if (total === undefined || records === undefined || isUnsure(id) || uncounted.has(id)) continue;
    const parts = partsOf(records, variable.id);
    if (parts === null) continue;
    const weighed = toGrams(total.value, total.unit);
    const step = stepInGrams(variable, total.value, total.unit);
    times.push(parts.sum / weighed);
    if (!isBeyondRounding(weighed, parts, step)) continue;
    const message = say(
      '{container} was weighed at {weighed}, but its {count} weights sum to {sum}: {difference} apart, where rounding explains {most}',
      {
        container: id,
        weighed: inGrams(weighed),
        count: parts.n,
        sum: inGrams(parts.sum),
        difference: inGrams(Math.abs(weighed - parts.sum)),
        most: inGrams(mostByRounding(parts.n, step)),
      },
    );
    const likely = likelyRecord(
      harvest,
      { id, variable: variable.id },
      weighed,
      mostByRounding(parts.n, step),
    );
    if (likely !== null) {
      const { at, perhaps } = likely;
      const found = inGrams(harvest.records[at]!.values[variable.id]!);
      const hint = say('; with {perhaps} here instead of {found} the two agree', {
        perhaps: inGrams(perhaps),
        found,
      });
      const place = recordPlace(harvest, at, variable.id);
      report(rule, {
        file: 'harvest.csv',
        place,
        found,
        expected: inGrams(perhaps),
        message: message + hint,
        where: id,
      });
      continue;
    }
    odd.push({
      file: 'trial.yaml',
      place: metadata.place(['containers', index, 'weighed_total', 'value']),
      found: inGrams(weighed),
      expected: inGrams(parts.sum),
      message: `${message}${swappedDigits(weighed, parts.sum)}`,
      where: id,
    });
  }
  if (odd.length === times.length && areOneFactor(times)) reportInOne(report, rule, odd, metadata);
  else for (const finding of odd) report(rule, finding);
}

/** True where the sums of several containers are all so many times their totals, and far from them: a unit is wrong. */
function areOneFactor(times: readonly number[]): boolean {
  const [least, most] = [Math.min(...times), Math.max(...times)];
  return times.length > 1 && most < least * 1.1 && (least > 1.5 || most < 0.67);
}

/** The record of a container whose weight, typed with a slip, explains the difference from the total; null where none does. */
function likelyRecord(
  { records }: Harvest,
  { id, variable }: { id: string; variable: string },
  total: number,
  most: number,
): { at: number; perhaps: number } | null {
  const weighed = [...records.keys()].filter((at) => {
    const { container, status, values } = records[at]!;
    return container === id && status === 'weighed' && typeof values[variable] === 'number';
  });
  const likely = likelyWeight(
    weighed.map((at) => records[at]!.values[variable]!),
    total,
    most,
  );
  return likely === null ? null : { at: weighed[likely.index]!, perhaps: likely.perhaps };
}

/** The containers of which a plant has no row, or two, at a cut: that is reported, and their sum would say it once more. */
function withoutEveryPlantOnce(harvest: Harvest, positions: readonly Position[], cuts: number): Set<string> {
  const uncounted = new Set<string>();
  for (let cut = 1; cut <= cuts; cut += 1) {
    for (const index of lookForRows(harvest, positions, cut).lacking.keys())
      uncounted.add(positions[index]!.container);
  }
  const seen = new Set<string>();
  for (const [index, { container, cut, plant }] of harvest.records.entries()) {
    const one = `${String(harvest.positionOf[index]!)} ${String(cut)} ${String(plant)}`;
    if (seen.has(one)) uncounted.add(container);
    seen.add(one);
  }
  return uncounted;
}
