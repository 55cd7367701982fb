import { say } from '../../model/say.ts';
import type { Variable } from '../../model/trial.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { gramsIn, isWeight } from '../../model/units.ts';
import { harvestColumns } from '../harvest-columns.ts';
import { nearest } from '../nearest.ts';
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
      const near = nearest(name, known);
      const message = notAColumn(name, near, known);
      report(rule, { file, place: metadata.keyPlace(path), found: name, expected: near, message });
      continue;
    }
    const other = headings.get(column);
    if (other !== undefined) {
      const message = say(
        'the heading {heading} stands for both {first} and {second}; one of the two is wrong',
        {
          heading: showText(column),
          first: other,
          second: name,
        },
      );
      report(rule, { file, place: metadata.place([...path, 'column']), found: column, message });
    }
    headings.set(column, name);
    const fault = unit === undefined ? null : unitFault(name, unit, variables);
    if (fault === null) continue;
    report(rule, { file, place: metadata.place([...path, 'unit']), found: unit ?? null, message: fault });
  }
}

function notAColumn(name: string, near: string | null, known: readonly string[]): string {
  const found = showText(name);
  return near === null
    ? say('{found} under harvest.columns is no column; columns: {columns}', {
        found,
        columns: known.join(', '),
      })
    : say('{found} under harvest.columns is no column; did you mean "{near}"?', { found, near });
}

function unitFault(name: string, unit: string, variables: readonly Variable[]): string | null {
  const variable = name === 'pot_total' ? variables[0] : variables.find(({ id }) => id === name);
  if (variable === undefined) return say('{column} has no unit; delete unit', { column: name });
  const own = variable.unit;
  if (unit === own || (isWeight(own) && isWeight(unit))) return null;
  if (isWeight(own)) {
    const known = Object.keys(gramsIn);
    return say('{unit} is no unit of weight that is converted; write one of: {units}', {
      unit: showText(unit),
      units: known.join(', '),
    });
  }
  return own === undefined
    ? say('{column} is in no unit; only weights are converted, so write the same unit', { column: name })
    : say('{column} is in {unit}; only weights are converted, so write the same unit', {
        column: name,
        unit: showText(own),
      });
}
