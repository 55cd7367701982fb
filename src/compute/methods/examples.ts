import type { Inference, Summary } from '../../model/findings.ts';
import { treatmentName } from '../format/level-names.ts';
import { unitName } from '../format/unit-name.ts';
import { type Measure, measureName } from '../tables/measures.ts';
import { digitsFor } from '../tables/treatment-summary.ts';
import { summarySteps } from '../workings/summary-steps.ts';
import { say } from '../../model/say.ts';
import type { Example, ExampleTrial } from './method.ts';

/** The steps of a summary of the first treatment that has the named ones. */
export function summaryExample(
  { trial, findings, names }: ExampleTrial,
  step: 'Mean' | 'Standard deviation' | 'CV' | 'Standard error' | '95% interval',
  measures: readonly Measure[],
): Example | null {
  for (const measure of measures) {
    for (const description of findings.treatments) {
      const summary = description[measure];
      const steps =
        summary === null ? [] : stepsOf(summary, findings.variable.unit, digitsFor(trial, [summary]));
      const wanted = steps.filter(({ name }) => name === say(step));
      const of = `${treatmentName(trial, description.treatment, names)}, ${measureName(measure)}`;
      if (wanted.length > 0) return { of, steps: wanted };
    }
  }
  return null;
}

function stepsOf(summary: Summary, unit: string, digits: number) {
  return summarySteps(summary, unitName(unit), digits);
}

/** The first analysis that was tested. */
export function testedAnalysis({ findings }: ExampleTrial): Inference | null {
  return findings.inference.find(({ verdict }) => verdict === 'tested') ?? null;
}
