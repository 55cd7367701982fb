import { say } from '../../model/say.ts';
import type { Findings, Summary, TreatmentDescription } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { digitsOfMean } from '../format/digits-of-mean.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatBare, type InBothUnits } from '../format/format-quantity.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { printedResolution } from '../format/printed-resolution.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { meaningOf, type Measure, measureName } from './measures.ts';
import {
  distinct,
  noNumber,
  type PageTable,
  type TableCell,
  type TableColumn,
  type Text,
} from './page-table.ts';

type Column = TableColumn & { cell: (summary: Summary) => Text };

/**
 * The table of treatments for one measure: n, mean, standard deviation and coefficient of variation in rows
 * headed by the treatment; standard error and interval only where the findings hold any.
 *
 * @param working names the anchor of a row's working, by the row's place
 */
export function treatmentSummaryTable(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
  descriptions: readonly TreatmentDescription[],
  measure: Measure,
  working: (row: number) => string,
): PageTable {
  const summaries = descriptions.map((description) => description[measure]);
  const known = summaries.filter((summary) => summary !== null);
  const columns = columnsFor(known, findings.variable.unit, digitsFor(trial, known));
  return {
    caption: `${findings.variable.name} ${measureName(measure)}. ${meaningOf(measure)}`,
    columns: [{ heading: say('Treatment'), numeric: false }, ...columns],
    rows: descriptions.map((description, row) => ({
      heading: treatmentName(trial, description.treatment, names),
      cells: columns.map((column) => cellOf(column, description[measure], working(row))),
    })),
    notes: distinct([
      ...known.map(missingSentence),
      ...known.map((summary) => summary.reason),
      ownErrorSentence(known, findings),
    ]),
  };
}

/** The decimals of a column: those that the row with the fewest values allows. */
export function digitsFor(trial: Trial, summaries: readonly Summary[]): number {
  const counts = summaries.map(({ n }) => n).filter((n) => n > 0);
  return counts.length === 0
    ? 0
    : digitsOfMean(printedResolution(trial.metadata.variables[0]), Math.min(...counts));
}

function columnsFor(summaries: readonly Summary[], unit: string, digits: number): Column[] {
  const both = unitInBoth(unit);
  const quantity = (heading: string, value: (summary: Summary) => number | null): Column => ({
    heading,
    unit: both,
    numeric: true,
    cell: (summary) => orNothing(value(summary), (number) => formatBare(number, unit, digits)),
  });
  const count = (heading: string, value: (summary: Summary) => number): Column => ({
    heading,
    numeric: true,
    cell: (summary) => formatNumber(value(summary), 0),
  });
  return [
    count('n', ({ n }) => n),
    ...(summaries.some(({ missing }) => missing)
      ? [count(say('Unknown'), ({ missing }) => missing ?? 0)]
      : []),
    quantity(say('Mean'), ({ mean }) => mean),
    quantity(say('Standard deviation'), ({ sd }) => sd),
    {
      heading: say('CV'),
      unit: '%',
      numeric: true,
      cell: ({ cv }) => orNothing(cv, (number) => formatNumber(number, 1)),
    },
    ...(summaries.some(({ se }) => se !== null) ? [quantity(say('Standard error'), ({ se }) => se)] : []),
    ...(summaries.some(({ ci95 }) => ci95 !== null) ? [intervalColumn(unit, digits)] : []),
  ];
}

function intervalColumn(unit: string, digits: number): Column {
  return {
    heading: say('95% interval of the mean'),
    unit: unitInBoth(unit),
    numeric: true,
    cell: ({ ci95 }) => {
      const [lower, upper] = (ci95 ?? []) as number[];
      if (lower === undefined || upper === undefined) return noNumber;
      return joined(formatBare(lower, unit, digits), toWord(), formatBare(upper, unit, digits));
    },
  };
}

/** The word between two limits. */
export const toWord = (): string => ` ${say('to')} `;

/** Two quantities with a word between them. */
export function joined(a: InBothUnits, between: string, b: InBothUnits): InBothUnits {
  return {
    metric: a.metric + between + b.metric,
    us: a.us === null || b.us === null ? null : a.us + between + b.us,
  };
}

/** The text of a number, or the sign for none. */
export function orNothing(value: number | null, text: (value: number) => Text): Text {
  return value === null ? noNumber : text(value);
}

function cellOf(column: Column, summary: Summary | null, working: string): Text | TableCell {
  if (summary === null) return noNumber;
  const text = column.cell(summary);
  return text === noNumber ? text : { text, working };
}

/** Two intervals of one mean stand on the page of a tested trial: whoever sees both is told why they differ. */
function ownErrorSentence(summaries: readonly Summary[], findings: Findings): string | undefined {
  const tested = findings.inference.some(({ verdict }) => verdict === 'tested');
  return tested && summaries.some(({ ci95 }) => ci95 !== null)
    ? say(
        "The intervals of this table rest on each treatment's own values alone; those of the figure and of the analysis rest on the error of the whole trial.",
      )
    : undefined;
}

function missingSentence({ missing }: Summary): string | undefined {
  return missing
    ? say(
        'Where the weight of something that grew is unknown, it is counted as unknown and left out of the mean, never taken as 0.',
      )
    : undefined;
}
