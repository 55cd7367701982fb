import { say } from '../../model/say.ts';
import type { Variable } from '../../model/trial.ts';
import type { Facts, Metadata } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { gramsIn, isWeight } from '../../model/units.ts';
import { whereOf } from '../grid.ts';
import { unitInFile } from '../harvest-columns.ts';
import { indexesWhere } from '../indexes-where.ts';
import { recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'off-the-scale',
  severity: 'warning',
  acceptable: true,
  title: 'Finer than the scale shows',
  meaning:
    'A scale with steps of 5 g never shows 132 g. A weight between its steps was read or typed wrongly, or the resolution in trial.yaml is not that of the scale.',
  example: 'fresh_weight is 132 g, but the scale shows steps of 5 g',
  check,
};
export default rule;

/** A hair that binary arithmetic may add to a whole number of steps. */
const hair = 1e-6;

/** The scale's step in g, or in the variable's own unit; null where it is not known how values fall on it. */
export function stepOf(metadata: Metadata, variable: Variable): number | null {
  const { resolution, unit = '' } = variable;
  const fileUnit = unitInFile(metadata, variable);
  const isMetric = (one: string): boolean => ['g', 'kg', 'mg'].includes(one);
  // Converted between metric and other units, no weight falls on a step.
  if (resolution === undefined || (fileUnit !== unit && !(isMetric(fileUnit) && isMetric(unit)))) return null;
  return resolution * (isWeight(unit) ? (gramsIn[unit] ?? 1) : 1);
}

/** True where a value is no whole number of steps. */
export function isBetweenSteps(value: number, step: number): boolean {
  const steps = value / step;
  return Math.abs(steps - Math.round(steps)) > hair * Math.max(1, steps);
}

function check({ metadata, harvest }: Facts, report: Report): void {
  if (harvest === null) return;
  for (const [number, variable] of (metadata.draft.variables ?? []).entries()) {
    const { id, resolution, unit = '' } = variable;
    const step = stepOf(metadata, variable);
    if (step === null || resolution === undefined) continue;
    const isOff = (value: number | null | undefined): boolean =>
      value !== null && value !== undefined && isBetweenSteps(value, step);
    const off = indexesWhere(harvest.records, ({ values }) => isOff(values[id]));
    if (off.length === 0) continue;
    const measured = indexesWhere(harvest.records, ({ values }) => typeof values[id] === 'number').length;
    if (off.length > 4 && off.length > measured / 4) {
      const message = say(
        '{count} of {all} values of {variable} lie between the steps of {resolution} {unit}; is the resolution right?',
        { count: off.length, all: measured, variable: id, resolution, unit },
      );
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(['variables', number, 'resolution']),
        found: String(resolution),
        message,
      });
      continue;
    }
    for (const index of off) {
      const record = harvest.records[index]!;
      const shown = String(Number(((record.values[id] ?? 0) / (step / resolution)).toPrecision(12)));
      const message = say('{variable} is {value} {unit}, but the scale shows steps of {resolution} {unit}', {
        variable: id,
        value: shown,
        unit,
        resolution,
      });
      report(rule, {
        file: 'harvest.csv',
        place: recordPlace(harvest, index, id),
        found: shown,
        message,
        where: whereOf(record),
      });
    }
  }
}
