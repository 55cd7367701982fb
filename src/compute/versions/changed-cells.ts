import type { HarvestRecord, Position, Reading, Trial } from '../../model/trial.ts';
import { recordPlace } from '../growing/remarks-of.ts';
import { positionKey } from '../position-key.ts';
import { metadataCells, type MetadataCell } from './metadata-cells.ts';

/** One cell that two versions of a trial hold otherwise. Weights are in g. */
export interface CellChange {
  /** The file of the trial's folder. */
  file: string;
  /** The row in words, such as `T3 2 2`. */
  row: string;
  column: string;
  /** Null where there was no such cell. */
  before: string | null;
  /** Null where there is none any more. */
  after: string | null;
}

/** The cells that differ between two versions of a trial, file by file, the weights first. */
export function changedCells(before: Trial, after: Trial): CellChange[] {
  return [
    ...compared('harvest.csv', harvestCells(before), harvestCells(after)),
    ...compared('layout.csv', layoutCells(before), layoutCells(after)),
    ...compared('readings.csv', readingsCells(before), readingsCells(after)),
    ...compared('trial.yaml', metadataCells(before.metadata), metadataCells(after.metadata)),
  ];
}

type Cells = ReadonlyMap<string, MetadataCell>;

function compared(file: string, before: Cells, after: Cells): CellChange[] {
  const changes: CellChange[] = [];
  for (const [key, { row, column, value }] of after) {
    const old = before.get(key)?.value ?? null;
    if (old !== value) changes.push({ file, row, column, before: old, after: value });
  }
  for (const [key, { row, column, value }] of before) {
    if (!after.has(key)) changes.push({ file, row, column, before: value, after: null });
  }
  return changes;
}

/** A value as text: null and what is empty are no cell. Units turned to g leave rounding in the last digits. */
function text(value: string | number | null): string {
  if (value === null) return '';
  return typeof value === 'number' ? String(Number(value.toPrecision(12))) : value;
}

function cellsOf<Row>(
  rows: readonly Row[],
  keyOf: (row: Row) => string,
  wordsOf: (row: Row) => string,
  valuesOf: (row: Row) => Readonly<Record<string, string | number | null>>,
): Map<string, MetadataCell> {
  const cells = new Map<string, MetadataCell>();
  for (const row of rows) {
    const key = keyOf(row);
    const words = wordsOf(row);
    for (const [column, value] of Object.entries(valuesOf(row))) {
      const said = text(value);
      if (said !== '') cells.set(`${key}\0${column}`, { row: words, column, value: said });
    }
  }
  return cells;
}

function layoutCells({ positions, files }: Trial): Map<string, MetadataCell> {
  // Without a layout.csv the positions follow from trial.yaml, which is compared itself.
  if (!files.has('layout.csv')) return new Map();
  return cellsOf<Position>(positions, positionKey, positionKey, ({ treatment, block, plot, plants }) => ({
    ...treatment,
    block,
    plot,
    plants,
  }));
}

function harvestCells({ harvest }: Trial): Map<string, MetadataCell> {
  const key = (record: HarvestRecord): string =>
    [positionKey(record), record.cut, record.plant ?? 'pot'].join('\0');
  return cellsOf(harvest, key, recordPlace, ({ values, status, date, potTotal, remark }) => ({
    ...values,
    status,
    date,
    pot_total: potTotal,
    remark,
  }));
}

function readingsCells({ readings }: Trial): Map<string, MetadataCell> {
  const words = ({ container, date }: Reading): string => `${container}, ${date}`;
  return cellsOf(readings, words, words, ({ level, added, ec, ph, temperature, rain, overflow, remark }) => ({
    level,
    added,
    ec,
    ph,
    temperature,
    rain,
    overflow,
    remark,
  }));
}
