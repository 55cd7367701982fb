import type { HarvestRecord, Position, Status, Variable } from '../model/trial.ts';
import type { CsvRow } from '../read/csv.ts';
import { harvestForm } from './csv-form.ts';
import { isDate } from './date.ts';
import type { Harvest, Layout, Metadata } from './facts.ts';
import { whereOf } from './grid.ts';
import { harvestColumns, isReserved, potTotalColumn, valueColumn } from './harvest-columns.ts';
import { nearest } from './nearest.ts';
import { trimmed } from './number.ts';
import { readCount, spotReader, type Spot } from './position-cells.ts';
import type { Report } from './rule.ts';
import { reportPlantBeyondSet } from './rules/plant-beyond-set.ts';
import { reportPositionNotPlanted } from './rules/position-not-planted.ts';
import { reportUnknownCut } from './rules/unknown-cut.ts';
import { reportUnknownStatus } from './rules/unknown-status.ts';
import { reportWrongDateInRow } from './rules/wrong-date-in-row.ts';
import { statusOf } from './statuses.ts';
import { readTable, type Table } from './table.ts';
import { valuesReader } from './read-values.ts';

const file = 'harvest.csv';

/**
 * Reads harvest.csv against the layout; null where its headings are not sound.
 *
 * @param also headings that are passed over
 */
export function readHarvest(
  bytes: Uint8Array,
  metadata: Metadata,
  layout: Layout,
  report: Report,
  also: readonly string[] = [],
): Harvest | null {
  const variables = (metadata.draft.variables ?? []).filter(({ id }) => !isReserved(id));
  const records: HarvestRecord[] = [];
  const positionOf: number[] = [];
  const starts: number[] = [];
  const unsure = new Set<string>();
  const doubted = new Set<string>();
  let unplaced = 0;
  const ids = [...layout.grid.containers.keys()];
  const onLost = (id: string): unknown => unsure.add(ids.includes(id) ? id : (nearest(id, ids) ?? ''));
  const closed = !metadata.lost.has('variables') && !metadata.lost.has('harvest');
  const optional = [...harvestColumns.optional, ...also];
  const needed = [...harvestColumns.needed, ...variables.map(({ id }) => id)];
  const form = {
    file,
    bytes,
    needed,
    optional,
    lenient: false,
    closed,
    needRows: metadata.draft.status === 'finished',
  };
  const { table, faulty } = readTable({ ...form, ...harvestForm(metadata) }, report, (opened) => {
    const spotOf = spotReader(
      opened,
      layout.grid.containers,
      !metadata.lost.has('containers'),
      report,
      onLost,
    );
    const recordOf = recordReader(opened, metadata, variables, (rule, finding) => {
      const container = /^(.+) \d+ \d+$/.exec(finding.where ?? '')?.[1];
      if (rule.severity === 'error' && container !== undefined) doubted.add(container);
      report(rule, finding);
    });
    return (row, isRagged) => {
      if (isRagged) return;
      const spot = spotOf(row);
      if (spot === null) {
        unplaced += 1;
        return;
      }
      const index = layout.grid.indexOf(spot.container, spot.row, spot.column);
      const position = layout.positions[index];
      if (position === undefined) {
        if (layout.complete) reportPositionNotPlanted(report, opened, row, spot, layout.table !== null);
        unsure.add(spot.container);
        return;
      }
      const record = recordOf(row, spot, position);
      if (record === null) {
        unsure.add(spot.container);
        return;
      }
      records.push(record);
      positionOf.push(index);
      starts.push(row.start);
    };
  });
  if (table === null) return null;
  return { table, records, positionOf, starts, unsure, unplaced, doubted, complete: !faulty };
}

/** A reader of a row into a record, null where its cut cannot be told; whatever it cannot read is reported and left out. */
function recordReader(
  table: Table,
  metadata: Metadata,
  variables: readonly Variable[],
  report: Report,
): (row: CsvRow, spot: Spot, position: Position) => HarvestRecord | null {
  const at = (name: string): number => table.index.get(name) ?? -1;
  const [cutAt, dateAt, plantAt, statusAt, remarkAt] = [
    at('cut'),
    at('date'),
    at('plant'),
    at('status'),
    at('remark'),
  ];
  const totalAt = at('pot_total');
  const cuts: readonly string[] | undefined = metadata.draft.dates?.cuts;
  const primary = variables[0];
  const columns = variables.map((variable) => valueColumn(metadata, variable, table.decimal));
  const isFinished = metadata.draft.status === 'finished';
  const readValues = valuesReader(table, columns, isFinished, report);
  const total = primary === undefined ? null : potTotalColumn(metadata, primary, table.decimal);
  const readTotal = total === null ? null : valuesReader(table, [total], false, report);

  const readCut = (row: CsvRow, text: string, spot: Spot): number | null => {
    if (text === '') return 1;
    const cut = readCount(table, row, 'cut', text, report);
    // Where a date of a cut was refused, there are more cuts than are known.
    const isKnown = cuts !== undefined && !metadata.lost.has('dates');
    if (cut !== null && isKnown && cut > cuts.length) {
      reportUnknownCut(report, table, row, cut, cuts.length, whereOf(spot));
      return null;
    }
    return cut;
  };
  const readDate = (row: CsvRow, text: string, cut: number, spot: Spot): string | null => {
    const usual = cuts?.[cut - 1] ?? null;
    if (text === usual || text === '') return usual;
    if (isDate(text)) return text;
    reportWrongDateInRow(report, table, row, text, whereOf(spot));
    // Nothing more is concluded from it.
    return null;
  };
  const readPlant = (row: CsvRow, text: string, position: Position): number | null => {
    if (text === '') return position.plants === 1 && primary?.of === 'plant' ? 1 : null;
    const plant = readCount(table, row, 'plant', text, report);
    if (plant !== null && plant > position.plants) {
      reportPlantBeyondSet(report, table, row, plant, position.plants, whereOf(position));
    }
    return plant;
  };
  const readStatus = (row: CsvRow, text: string, spot: Spot): Status | null => {
    const status = statusOf(text);
    if (status === null) reportUnknownStatus(report, table, row, text, whereOf(spot));
    return status;
  };

  return (row, spot, position) => {
    const { cells } = row;
    const cell = (index: number): string => (index === -1 ? '' : trimmed(cells[index] ?? ''));
    const cut = readCut(row, cell(cutAt), spot);
    const statusText = cell(statusAt);
    const status = readStatus(row, statusText, spot);
    const read = {
      date: readDate(row, cell(dateAt), cut ?? 1, spot),
      plant: readPlant(row, cell(plantAt), position),
      values: readValues(row, spot, status, statusText),
    };
    if (cut === null) return null;
    return {
      container: spot.container,
      row: spot.row,
      column: spot.column,
      cut,
      ...read,
      status: status ?? 'weighed',
      potTotal: cell(totalAt) === '' ? null : (readTotal?.(row, spot, null, '')['pot_total'] ?? null),
      remark: remarkAt === -1 ? '' : (cells[remarkAt] ?? '').trim(),
      line: row.line,
    };
  };
}
