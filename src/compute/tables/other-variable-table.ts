import type { Findings } from '../../model/findings.ts';
import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { digitsOfMean } from '../format/digits-of-mean.ts';
import { digitsAsWritten } from '../growing/quantities.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatPercent } from '../format/format-percent.ts';
import { formatBare } from '../format/format-quantity.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { printedResolution } from '../format/printed-resolution.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { markInWords, variableOf } from '../marks-in-words.ts';
import { distinct, noNumber, type PageTable, type TableColumn, type Text } from './page-table.ts';
import { orNothing } from './treatment-summary.ts';

type OtherVariable = NonNullable<Findings['other_variables']>[number];
type Row = OtherVariable['treatments'][number];
type Column = TableColumn & { cell: (row: Row) => Text };

/** What a variable beside the primary one is called: its name, and its cut where the trial has several. */
export function otherVariableName(findings: Findings, { variable, cut }: OtherVariable): string {
  return findings.treatments_by_cut.length > 1
    ? say('{measure}, cut {cut}', { measure: variable.name, cut })
    : variable.name;
}

/** One variable by treatment, described as what it is. */
export function otherVariableTable(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
  entry: OtherVariable,
): PageTable {
  const columns = columnsOf(trial, entry);
  return {
    caption: otherVariableName(findings, entry),
    columns: [{ heading: say('Treatment'), numeric: false }, ...columns],
    rows: entry.treatments.map((row) => ({
      heading: treatmentName(trial, row.treatment, names),
      cells: columns.map(({ cell }) => cell(row)),
    })),
    notes: distinct([...notesOf(trial, entry), ...entry.treatments.map(({ reason }) => reason)]),
  };
}

function columnsOf(trial: Trial, { variable, treatments }: OtherVariable): Column[] {
  const count = (heading: string, value: (row: Row) => number): Column => ({
    heading,
    numeric: true,
    cell: (row) => formatNumber(value(row), 0),
  });
  const counts = [
    count('n', ({ n }) => n),
    ...(treatments.some(({ missing }) => missing > 0)
      ? [count(say('Unknown'), ({ missing }) => missing)]
      : []),
  ];
  if (variable.kind === 'yes or no') return [...counts, ...proportionColumns()];
  const resolution = printedResolution(variableOf(trial, variable.id));
  const fewest = Math.max(1, Math.min(...treatments.map(({ n }) => n).filter((n) => n > 0)));
  const digits = digitsOfMean(resolution, Number.isFinite(fewest) ? fewest : 1);
  const amount = (heading: string, value: (row: Row) => number | null): Column => ({
    heading,
    numeric: true,
    unit: unitInBoth(variable.unit),
    cell: (row) => orNothing(value(row), (number) => formatBare(number, variable.unit, digits)),
  });
  const mark = (heading: string, value: (row: Row) => number | null): Column => ({
    heading,
    numeric: true,
    cell: (row) => orNothing(value(row), asWritten),
  });
  if (variable.kind === 'scored') {
    return [
      ...counts,
      mark(say('Lowest'), ({ minimum }) => minimum),
      mark(say('Median'), ({ median }) => median),
      mark(say('Highest'), ({ maximum }) => maximum),
      { heading: say('How often each mark'), numeric: false, cell: countsInWords },
    ];
  }
  return [
    ...counts,
    amount(say('Mean'), ({ mean }) => mean),
    amount(say('Standard deviation'), ({ sd }) => sd),
    amount(say('Lowest'), ({ minimum }) => minimum),
    amount(say('Median'), ({ median }) => median),
    amount(say('Highest'), ({ maximum }) => maximum),
  ];
}

function proportionColumns(): Column[] {
  return [
    {
      heading: say('Yes'),
      numeric: true,
      cell: ({ proportion }) => orNothing(proportion?.yes ?? null, (yes) => formatNumber(yes, 0)),
    },
    {
      heading: say('Part that was yes'),
      numeric: true,
      cell: ({ proportion }) =>
        orNothing(proportion?.proportion ?? null, (part) => formatPercent(100 * part, 0)),
    },
    {
      heading: say('95% interval (Wilson)'),
      numeric: true,
      cell: ({ proportion }) =>
        typeof proportion?.lower === 'number' && typeof proportion.upper === 'number'
          ? say('{from} to {to}', {
              from: formatPercent(100 * proportion.lower, 0),
              to: formatPercent(100 * proportion.upper, 0),
            })
          : noNumber,
    },
  ];
}

/** A mark, or the median of several, with the decimals that it has. */
const asWritten = (value: number): string => formatNumber(value, digitsAsWritten(value));

/** "0: 8, 1: 3": each mark with how often it was given. */
function countsInWords({ counts }: Row): string {
  return (counts ?? []).map(({ value, count }) => `${asWritten(value)}: ${String(count)}`).join(', ');
}

function notesOf(trial: Trial, { variable, treatments }: OtherVariable): string[] {
  const declared = variableOf(trial, variable.id);
  const given = new Set(treatments.flatMap(({ counts }) => (counts ?? []).map(({ value }) => value)));
  const meanings =
    variable.kind === 'scored'
      ? [...given]
          .sort((a, b) => a - b)
          .flatMap((value) => {
            const words = markInWords(declared, value);
            return words === null ? [] : [`${String(value)}: ${words}`];
          })
      : [];
  return [
    ...(meanings.length > 0 ? [say('The marks: {marks}.', { marks: meanings.join('; ') })] : []),
    ...(variable.kind === 'scored' ? [say('Marks are no amounts: their median is given, and no mean.')] : []),
    ...(variable.judges === undefined ? [] : [judgesNote(trial, variable)]),
    ...(declared?.scale === 'BBCH'
      ? [say('Growth stages by the BBCH scale, as its monograph has them for vegetables, shortened.')]
      : []),
  ];
}

function judgesNote(trial: Trial, { id, judges = 0 }: OtherVariable['variable']): string {
  const blind = trial.metadata.variables
    .filter(({ panel }) => panel === id)
    .every((each) => each.blind === true);
  return blind
    ? say(
        '{count} judges, who did not know the treatments; each plant or pot counts with the median of their marks.',
        {
          count: judges,
        },
      )
    : say('{count} judges; each plant or pot counts with the median of their marks.', { count: judges });
}
