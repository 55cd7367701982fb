import { headlineMeasure } from '../compute/headline-measure.ts';
import { digitsFor } from '../compute/tables/treatment-summary.ts';
import type { Measure } from '../compute/tables/measures.ts';
import type { Findings, Inference } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import type { Asked, ComponentAttribute } from './component.ts';

const measures: Readonly<Record<string, Measure>> = {
  plant_set: 'per_plant_set',
  plant_harvested: 'per_plant_harvested',
  pot: 'per_pot',
  container: 'per_container',
};

export const perAttribute: ComponentAttribute = {
  name: 'per',
  choices: Object.keys(measures),
  meaning:
    'What is counted: a plant set (the dead as 0), a plant harvested, a pot or a container. Left out for the one that the trial’s page tells its finding in.',
};

export const digitsAttribute: ComponentAttribute = {
  name: 'digits',
  form: { pattern: /^[0-6]$/, words: 'a whole number from 0 to 6' },
  meaning: 'Digits after the decimal point of the metric number; those of the US number follow from it.',
};

/** The measure that a component asks for, or the one that the trial's finding is told in. */
export function askedMeasure(asked: Asked, trial: Trial): Measure {
  return measures[asked.attribute('per') ?? ''] ?? headlineMeasure(trial);
}

/** The analysis of a measure and cut; null where there is none. */
export function inferenceOf(findings: Findings, measure: Measure, cut: number | 'all'): Inference | null {
  return findings.inference.find((entry) => entry.measure === measure && entry.cut === cut) ?? null;
}

/** The digits asked for, or those of the trial's tables, in prose never finer than the scale that was read. */
export function askedDigits(asked: Asked, trial: Trial, findings: Findings, measure: Measure): number {
  const given = asked.attribute('digits');
  if (given !== null) return Number(given);
  const summaries = findings.treatments.flatMap((each) => each[measure] ?? []);
  const finest = trial.metadata.variables[0]?.resolution === undefined ? 1 : 0;
  return Math.max(0, Math.min(digitsFor(trial, summaries), finest));
}
