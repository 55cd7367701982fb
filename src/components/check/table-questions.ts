import type { TableAlone, WeightUnit } from '../../check/table-alone.ts';

/** What a table of weights is asked about, with what can be read off it already. */
export interface TableQuestions {
  /** The unit that the heading of the weights names; null where it names none. */
  unit: WeightUnit | null;
  /** The first date in it, as it stands there; null where it has none. */
  date: string | null;
  hasPlots: boolean;
  /** The heading of the column that is taken for the weights. */
  weight: string;
}

/** What to ask of a table, or what it lacks. */
export function questionsOf(
  table: TableAlone | { lacks: readonly string[] },
): { questions: TableQuestions } | { lacks: readonly string[] } {
  if ('lacks' in table) return table;
  const { index, headings, weight, unit } = table;
  return {
    questions: { unit, date: firstDate(table), hasPlots: index.has('plot'), weight: headings[weight]! },
  };
}

function firstDate({ csv, index }: TableAlone): string | null {
  const at = index.get('date');
  if (at === undefined) return null;
  let found: string | null = null;
  csv.read(({ cells }) => {
    const cell = (cells[at] ?? '').trim();
    if (/^\d{4}-\d{2}-\d{2}$/.test(cell)) found ??= cell;
  });
  return found;
}
