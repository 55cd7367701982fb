import { say } from '../../../model/say.ts';
import type { Findings, Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import { formatNumber } from '../../format/format-number.ts';
import { formatPercent } from '../../format/format-percent.ts';
import { formatQuantity, type InBothUnits } from '../../format/format-quantity.ts';
import { unitName } from '../../format/unit-name.ts';
import { tell } from '../../words/tell.ts';
import type { Words } from '../../words/words.ts';
import { digitsFor } from '../treatment-summary.ts';

/** What is said of an analysis beside its tables, each with its name. */
export function analysisParticulars(
  trial: Trial,
  findings: Findings,
  inference: Inference,
): { name: string; text: Words }[] {
  const { unit } = findings.variable;
  const digits = digitsFor(
    trial,
    findings.treatments.flatMap((each) => each[inference.measure] ?? []),
  );
  const amount = (value: number, plus = false): InBothUnits => formatQuantity(value, unit, digits, { plus });
  const said: { name: string; text: Words }[] = [];
  if (inference.method) said.push({ name: say('Method'), text: [say(inference.method)] });
  said.push({ name: say('Model'), text: [inference.model] });
  if (inference.cv_percent !== null) {
    said.push({ name: say('CV of the residual'), text: [formatPercent(inference.cv_percent, 1)] });
  }
  if (inference.least_significant_difference !== null) {
    const text = tell('{difference}, for one pair chosen beforehand', {
      difference: amount(inference.least_significant_difference),
    });
    said.push({ name: say('Least significant difference'), text });
  }
  if (inference.sed) {
    const { smallest, mean, largest } = inference.sed;
    const text = tell('smallest {smallest}, mean {mean}, largest {largest}', {
      smallest: amount(smallest),
      mean: amount(mean),
      largest: amount(largest),
    });
    said.push({ name: say('Standard errors of differences'), text });
  }
  const components = inference.variance_components.flatMap(({ term, variance }) =>
    variance === null ? [] : [`${say(`between ${term}s`)} ${formatNumber(variance, 1)}`],
  );
  if (components.length > 0) {
    const square = unitName(unit) === '' ? '' : ` ${unitName(unit)}²`;
    said.push({ name: say('Variances'), text: [`${components.join(', ')}${square}`] });
  }
  const unusual = inference.checks?.unusual ?? [];
  if (unusual.length > 0) {
    const text = unusual.flatMap(({ container, row, column, residual }, index): Words => [
      index === 0 ? '' : '; ',
      ...tell('{place} by {residual}', {
        place: `${container} ${row} ${column}`,
        residual: amount(residual, true),
      }),
    ]);
    said.push({ name: say('Unusual'), text });
  }
  return said;
}
