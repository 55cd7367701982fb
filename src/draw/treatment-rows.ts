import { digitsOfMean } from '../compute/format/digits-of-mean.ts';
import { digitsOfValue } from '../compute/format/digits-of-value.ts';
import { formatQuantity, type InBothUnits } from '../compute/format/format-quantity.ts';
import { isCheck, treatmentName } from '../compute/format/level-names.ts';
import { printedResolution } from '../compute/format/printed-resolution.ts';
import { positionKey } from '../compute/position-key.ts';
import { treatmentKey } from '../compute/treatments.ts';
import { yieldsOf } from '../compute/yields.ts';
import type { Findings, Summary } from '../model/findings.ts';
import type { Treatment, Trial } from '../model/trial.ts';
import { say } from '../model/say.ts';
import type { FigureOptions } from './figure-options.ts';
import { potOutcomes } from './pot-outcome.ts';
import { markedStatuses } from './status-mark.ts';

/** An interval with what it is an interval of. */
export interface Interval {
  centre: number;
  lower: number;
  upper: number;
}

/** One treatment as the drawing of the weights needs it; values in the variable's unit, g for weights. */
export interface TreatmentRow {
  name: string;
  check: boolean;
  values: readonly number[];
  summary: Summary | null;
  /** Decimals of the mean and its limits. */
  digits: number;
  /** Decimals of a single value. */
  valueDigits: number;
  /** Only where the replicates allow one. */
  interval: Interval | null;
  /** The interval's centre, where it prints otherwise than the plain mean (unequal plants or blocks). */
  adjusted: InBothUnits | null;
  /** What is not among the values, such as "1 dead". */
  lost: readonly string[];
}

export type Measure = 'per_plant_harvested' | 'per_pot';

/** Plants where they were weighed singly in every treatment, else pots. */
export function measureOf(findings: Findings): Measure {
  return findings.treatments.every((each) => each.per_plant_harvested !== null)
    ? 'per_plant_harvested'
    : 'per_pot';
}

/** The treatments' values, means and intervals, in the order of the findings. */
export function treatmentRows(
  trial: Trial,
  findings: Findings,
  measure: Measure,
  { names }: Required<FigureOptions>,
): TreatmentRow[] {
  const resolution = printedResolution(trial.metadata.variables[0]);
  const values = valuesByTreatment(trial, measure);
  const fates = fatesByTreatment(trial);
  return findings.treatments.map((described) => {
    const key = keyOf(trial, described.treatment);
    const summary = described[measure];
    const digits = digitsOfMean(resolution, Math.max(1, summary?.n ?? 1));
    const interval = intervalOf(trial, findings, measure, described.treatment, summary);
    return {
      name: treatmentName(trial, described.treatment, names),
      check: isCheck(trial, described.treatment),
      values: values.get(key) ?? [],
      summary,
      valueDigits: digitsOfValue(resolution),
      digits,
      interval,
      adjusted: adjustedMean(interval, summary, findings.variable.unit, digits),
      lost: fates.get(key) ?? [],
    };
  });
}

function adjustedMean(
  interval: Interval | null,
  summary: Summary | null,
  unit: string,
  digits: number,
): InBothUnits | null {
  if (interval === null) return null;
  const centre = formatQuantity(interval.centre, unit, digits);
  const plain = summary?.mean ?? null;
  return plain !== null && formatQuantity(plain, unit, digits).metric === centre.metric ? null : centre;
}

/** A treatment's levels in the order of the trial's factors. */
function keyOf(trial: Trial, treatment: Treatment): string {
  const ids = (trial.metadata.factors ?? []).map(({ id }) => id).filter((id) => Object.hasOwn(treatment, id));
  return treatmentKey(Object.fromEntries(ids.map((id) => [id, treatment[id]!])));
}

function valuesByTreatment(trial: Trial, measure: Measure): Map<string, number[]> {
  const yields = yieldsOf(trial, 'all');
  const singles =
    measure === 'per_pot'
      ? yields.pots.map(({ position, pot }) => ({ position, value: pot.value }))
      : yields.plants
          .filter(({ plant }) => plant !== null)
          .map(({ position, harvested }) => ({ position, value: harvested.value }));
  const grouped = new Map<string, number[]>();
  for (const { position, value } of singles) {
    const key = keyOf(trial, position.treatment);
    const known = grouped.get(key) ?? [];
    if (value !== null) known.push(value);
    grouped.set(key, known);
  }
  return grouped;
}

/** Pots or plants by what else became of them, in words. */
function fatesByTreatment(trial: Trial): Map<string, string[]> {
  const outcomes = potOutcomes(trial).outcomes;
  const plants = Map.groupBy(trial.harvest, (record) => positionKey(record));
  const grouped = Map.groupBy(outcomes, ({ position }) => keyOf(trial, position.treatment));
  return new Map(
    [...grouped].map(([key, pots]) => {
      const records = pots.flatMap(({ position }) => plants.get(positionKey(position)) ?? []);
      const worst = Map.groupBy(records, (record) => `${positionKey(record)} ${String(record.plant)}`);
      const count = (status: string) =>
        [...worst.values()].filter((ofPlant) => ofPlant.some((record) => record.status === status)).length;
      return [
        key,
        markedStatuses
          .map((status) => [count(status), status] as const)
          .filter(([number]) => number > 0)
          .map(([number, status]) => `${String(number)} ${say(status)}`),
      ];
    }),
  );
}

/** The limits of a tested mean; else the 95% interval of replicates; else nothing. */
function intervalOf(
  trial: Trial,
  findings: Findings,
  measure: Measure,
  treatment: Treatment,
  summary: Summary | null,
): Interval | null {
  const key = keyOf(trial, treatment);
  const tested = findings.inference
    .filter((entry) => entry.verdict === 'tested' && entry.measure === measure && entry.cut === 'all')
    .flatMap(({ means }) => means)
    .find((mean) => keyOf(trial, mean.treatment) === key);
  if (tested && tested.mean !== null && tested.lower !== null && tested.upper !== null) {
    return { centre: tested.mean, lower: tested.lower, upper: tested.upper };
  }
  const limits: readonly (number | undefined)[] = summary?.ci95 ?? [];
  const [lower, upper] = limits;
  if (lower === undefined || upper === undefined || typeof summary?.mean !== 'number') return null;
  return { centre: summary.mean, lower, upper };
}
