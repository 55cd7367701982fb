import { gramsIn, isWeight } from '../model/units.ts';
import { toGrams } from '../check/to-grams.ts';
import { rowsText } from '../weigh/rows-text.ts';
import type { KnownTrial } from './known.ts';
import type { TakenRow } from './take-rows.ts';

/** harvest.csv of rows that were taken, and the units that it is written in. */
export interface HarvestTable {
  text: string;
  /** Units of columns that are not the trial's own, by column: `harvest.columns` of trial.yaml has to name them. */
  units: ReadonlyMap<string, string>;
  /** Columns whose values stood in several units and were converted to the trial's own. */
  converted: readonly string[];
}

const optional = ['cut', 'date', 'plant'] as const;

/** Writes rows as harvest.csv, every value in the digits and the unit that it was given in where that can be. */
export function harvestTable(rows: readonly TakenRow[], known: KnownTrial): HarvestTable {
  const units = new Map<string, string>();
  const converted: string[] = [];
  const primary = known.variables[0];
  const columns = known.variables.map(({ id, unit }) => {
    const given = new Set(rows.flatMap(({ values }) => values.get(id)?.unit ?? []));
    return { id, ...unitOfColumn(id, unit, given, units, converted) };
  });
  const totals = new Set(rows.flatMap(({ potTotal }) => potTotal?.unit ?? []));
  const total = unitOfColumn('pot_total', columns[0]?.unit ?? primary?.unit ?? 'g', totals, units, converted);
  const keys = optional.filter((key) => rows.some((row) => row.keys[key] !== ''));
  const has = {
    status: rows.some(({ status }) => status !== ''),
    potTotal: rows.some(({ potTotal }) => potTotal !== null),
    remark: rows.some(({ remark }) => remark !== ''),
  };
  const heading = [
    ...['container', 'row', 'column'],
    ...keys,
    ...columns.map(({ id }) => id),
    ...(has.status ? ['status'] : []),
    ...(has.potTotal ? ['pot_total'] : []),
    ...(has.remark ? ['remark'] : []),
  ];
  const lines = rows.map((row) => [
    ...[row.keys.container, row.keys.row, row.keys.column],
    ...keys.map((key) => row.keys[key]),
    ...columns.map(({ id, unit }) => digitsIn(row.values.get(id), unit)),
    ...(has.status ? [row.status] : []),
    ...(has.potTotal ? [digitsIn(row.potTotal ?? undefined, total.unit)] : []),
    ...(has.remark ? [row.remark.replaceAll(/\s*[\r\n]+\s*/g, ' ')] : []),
  ]);
  return { text: rowsText([heading, ...lines]), units, converted };
}

/** The unit a column is written in: the one that all its values have, else the trial's own. */
function unitOfColumn(
  id: string,
  own: string,
  given: ReadonlySet<string>,
  units: Map<string, string>,
  converted: string[],
): { unit: string } {
  if (!isWeight(own)) return { unit: own };
  const [first = own, ...more] = [...given].map((unit) => (unit === '' ? own : unit));
  if (more.some((unit) => unit !== first)) {
    converted.push(id);
    return { unit: own };
  }
  if (first !== own) units.set(id, first);
  return { unit: first };
}

function digitsIn(value: { digits: string; unit: string } | undefined, unit: string): string {
  if (value === undefined) return '';
  const { digits, unit: own } = value;
  if (!isWeight(unit) || own === '' || own === unit) return digits;
  const grams = toGrams(Number(digits), own, digits);
  return String(unit === 'g' ? grams : grams / (gramsIn[unit] ?? 1));
}
