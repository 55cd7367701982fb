import { formatNumber } from '../compute/format/format-number.ts';
import type { FigureTable } from '../model/figure.ts';
import type { Findings } from '../model/findings.ts';
import { say } from '../model/say.ts';
import { headed } from './columns-in-both.ts';

type OtherVariable = NonNullable<Findings['other_variables']>[number];
type Row = OtherVariable['treatments'][number];

/** The table twin of a variable beside the primary one. */
export function otherVariableTwin(
  caption: string,
  { variable }: OtherVariable,
  rows: readonly { row: Row; name: string }[],
): FigureTable {
  const number = (value: number | null | undefined) => (typeof value === 'number' ? plain(value) : '');
  const numeric = (heading: string) => ({ heading, numeric: true });
  const first = { heading: say('Treatment'), numeric: false };
  if (variable.kind === 'yes or no') {
    return {
      caption,
      columns: [
        first,
        numeric('n'),
        numeric(say('Yes')),
        numeric(say('Lower 95% limit (%)')),
        numeric(say('Upper 95% limit (%)')),
      ],
      rows: rows.map(({ row, name }) => [
        name,
        String(row.n),
        String(row.proportion?.yes ?? 0),
        number(percentOf(row.proportion?.lower)),
        number(percentOf(row.proportion?.upper)),
      ]),
    };
  }
  if (variable.kind !== 'measured') {
    const marks = [...new Set(rows.flatMap(({ row }) => (row.counts ?? []).map(({ value }) => value)))].sort(
      (a, b) => a - b,
    );
    return {
      caption,
      columns: [first, ...marks.map((mark) => numeric(plain(mark))), numeric(say('Median'))],
      rows: rows.map(({ row, name }) => [
        name,
        ...marks.map((mark) => String(row.counts?.find(({ value }) => value === mark)?.count ?? 0)),
        number(row.median),
      ]),
    };
  }
  const columns: [string, (row: Row) => number | null][] = [
    [say('Lowest'), ({ minimum }) => minimum],
    [say('Lower quartile'), (row) => row.lower_quartile],
    [say('Median'), ({ median }) => median],
    [say('Upper quartile'), (row) => row.upper_quartile],
    [say('Highest'), ({ maximum }) => maximum],
    [say('Mean'), ({ mean }) => mean],
  ];
  return {
    caption,
    columns: [first, ...columns.map(([heading]) => numeric(headed(heading, variable.unit)))],
    rows: rows.map(({ row, name }) => [name, ...columns.map(([, value]) => number(value(row)))]),
  };
}

/** A number as it is, to at most three decimals. */
function plain(value: number): string {
  const written = Number(value.toFixed(3));
  return formatNumber(written, String(written).split('.')[1]?.length ?? 0);
}

const percentOf = (part: number | null | undefined): number | null =>
  typeof part === 'number' ? 100 * part : null;
