import type { Variable } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { gramsIn, isWeight } from '../../model/units.ts';
import { harvestColumns } from '../harvest-columns.ts';
import { didYouMean, nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'harvest-mapping',
  severity: 'error',
  acceptable: false,
  title: 'Mapping of columns that does not hold',
  meaning:
    'harvest: in trial.yaml says which heading stands for which of our columns, and in which unit. A mapping to nothing would be passed over.',
  example: '"fresh_wieght" under harvest.columns is no column; did you mean "fresh_weight"?',
  check,
};
export default rule;

const file = 'trial.yaml';

function check({ metadata }: Facts, report: Report): void {
  const { harvest, variables = [] } = metadata.draft;
  if (metadata.lost.has('variables')) return;
  const known = [...harvestColumns.needed, ...harvestColumns.optional, ...variables.map(({ id }) => id)];
  const headings = new Map<string, string>();
  for (const [name, { column, unit }] of Object.entries(harvest?.columns ?? {})) {
    const path = ['harvest', 'columns', name];
    if (!known.includes(name)) {
      const advice =
        nearest(name, known) === null ? `; columns: ${known.join(', ')}` : didYouMean(name, known);
      const message = `${showText(name)} under harvest.columns is no column${advice}`;
      report(rule, {
        file,
        place: metadata.keyPlace(path),
        found: name,
        expected: nearest(name, known),
        message,
      });
      continue;
    }
    const other = headings.get(column);
    if (other !== undefined) {
      const message = `the heading ${showText(column)} stands for both ${other} and ${name}; one of the two is wrong`;
      report(rule, { file, place: metadata.place([...path, 'column']), found: column, message });
    }
    headings.set(column, name);
    const fault = unit === undefined ? null : unitFault(name, unit, variables);
    if (fault === null) continue;
    report(rule, { file, place: metadata.place([...path, 'unit']), found: unit ?? null, message: fault });
  }
}

function unitFault(name: string, unit: string, variables: readonly Variable[]): string | null {
  const variable = name === 'pot_total' ? variables[0] : variables.find(({ id }) => id === name);
  if (variable === undefined) return `${name} has no unit; delete unit`;
  const own = variable.unit;
  if (unit === own || (isWeight(own) && isWeight(unit))) return null;
  if (isWeight(own)) {
    const known = Object.keys(gramsIn);
    return `${showText(unit)} is no unit of weight that is converted; write one of: ${known.join(', ')}`;
  }
  return `${name} is in ${own === undefined ? 'no unit' : showText(own)}; only weights are converted, so write the same unit`;
}
