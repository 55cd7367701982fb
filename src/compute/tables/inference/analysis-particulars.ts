import type { Findings, Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import { formatNumber } from '../../format/format-number.ts';
import { formatQuantity, type InBothUnits } from '../../format/format-quantity.ts';
import { unitName } from '../../format/unit-name.ts';
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
  if (inference.method) said.push({ name: 'Method', text: [inference.method] });
  said.push({ name: 'Model', text: [inference.model] });
  if (inference.cv_percent !== null) {
    said.push({ name: 'CV of the residual', text: [`${formatNumber(inference.cv_percent, 1)}%`] });
  }
  if (inference.least_significant_difference !== null) {
    const text = [amount(inference.least_significant_difference), ', for one pair chosen beforehand'];
    said.push({ name: 'Least significant difference', text });
  }
  if (inference.sed) {
    const { smallest, mean, largest } = inference.sed;
    const text = ['smallest ', amount(smallest), ', mean ', amount(mean), ', largest ', amount(largest)];
    said.push({ name: 'Standard errors of differences', text });
  }
  const components = inference.variance_components.flatMap(({ term, variance }) =>
    variance === null ? [] : [`between ${term}s ${formatNumber(variance, 1)}`],
  );
  if (components.length > 0) {
    const square = unitName(unit) === '' ? '' : ` ${unitName(unit)}²`;
    said.push({ name: 'Variances', text: [`${components.join(', ')}${square}`] });
  }
  const unusual = inference.checks?.unusual ?? [];
  if (unusual.length > 0) {
    const text = unusual.flatMap(({ container, row, column, residual }, index): Words => [
      `${index === 0 ? '' : '; '}${container} ${row} ${column} by `,
      amount(residual, true),
    ]);
    said.push({ name: 'Unusual', text });
  }
  return said;
}
