import { say } from '../../model/say.ts';
import type { Findings, Summary, TreatmentDescription } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { type Cut } from '../cuts.ts';
import { digitsOfValue } from '../format/digits-of-value.ts';
import { formatNumber } from '../format/format-number.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { printedResolution } from '../format/printed-resolution.ts';
import { unitName } from '../format/unit-name.ts';
import { type Measure, measureName } from '../tables/measures.ts';
import { digitsFor } from '../tables/treatment-summary.ts';
import { treatmentKey } from '../treatments.ts';
import { type Yields, yieldsOf } from '../yields.ts';
import { areaSteps } from './area-steps.ts';
import { summarySteps } from './summary-steps.ts';
import { valuesOf, type ValueOfPlace, weightsRows } from './values-of.ts';
import { type MeasureWorking, type TreatmentWorking, workingId } from './working.ts';

/** For each treatment the values that went into its numbers, the rows they stand in, and the formulas. */
export function treatmentWorkings(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
  cut: Cut,
  descriptions: readonly TreatmentDescription[],
  measures: readonly Measure[],
): TreatmentWorking[] {
  const { plants, pots } = yieldsOf(trial, cut);
  const plantsOf = Map.groupBy(plants, ({ position }) => treatmentKey(position.treatment));
  const potsOf = Map.groupBy(pots, ({ position }) => treatmentKey(position.treatment));
  const ofTreatment = ({ treatment }: TreatmentDescription): Yields => {
    const key = treatmentKey(treatment);
    return { plants: plantsOf.get(key) ?? [], pots: potsOf.get(key) ?? [] };
  };
  const rows = weightsRows(trial, cut);
  return descriptions.map((description, place) => ({
    treatment: treatmentName(trial, description.treatment, names),
    measures: measures.flatMap((measure): MeasureWorking[] => {
      const summary = description[measure];
      if (summary === null) return [];
      const id = workingId(cut, place, measure);
      const values = valuesOf(ofTreatment(description), measure, rows);
      return [working(trial, findings, id, measure, summary, values)];
    }),
    area: areaWorking(description, workingId(cut, place, 'area')),
  }));
}

function working(
  trial: Trial,
  findings: Findings,
  id: string,
  measure: Measure,
  summary: Summary,
  values: readonly ValueOfPlace[],
): MeasureWorking {
  const unit = unitName(findings.variable.unit);
  const digits = digitsOfValue(printedResolution(trial.metadata.variables[0]));
  const measured = `${findings.variable.name} ${measureName(measure)}`;
  return {
    id,
    measure,
    heading: unit === '' ? measured : say('{measured}, in {unit}', { measured, unit }),
    values: values.flatMap(({ place, value, rows }) =>
      value === null ? [] : [{ place, value: formatNumber(value, digits), rows }],
    ),
    leftOut: values.flatMap(({ place, value, reason, rows }) =>
      value === null ? [{ place, reason, rows }] : [],
    ),
    steps: summarySteps(summary, unit, digitsFor(trial, [summary])),
  };
}

function areaWorking(description: TreatmentDescription, id: string): TreatmentWorking['area'] {
  const steps = areaSteps(description);
  return steps.length === 0 ? null : { id, heading: say('Yield by area and by day'), steps };
}
