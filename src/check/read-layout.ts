import { say } from '../model/say.ts';
import type { Container, Factor, Position } from '../model/trial.ts';
import type { CsvRow } from '../read/csv.ts';
import { companionForm } from './csv-form.ts';
import type { Layout, Metadata } from './facts.ts';
import { emptyGrid, whereOf } from './grid.ts';
import { trimmed } from './number.ts';
import { ownValue } from './own-value.ts';
import { mostPlants, plantsPerPot } from './plants-per-pot.ts';
import { readCount, spotReader, type Spot } from './position-cells.ts';
import type { Report } from './rule.ts';
import { reportBlankCell } from './rules/blank-cell.ts';
import { reportLayoutAndContainerDiffer } from './rules/layout-and-container-differ.ts';
import { reportPositionTwice } from './rules/position-twice.ts';
import { reportTooManyPlants } from './rules/too-many-plants.ts';
import { reportUnknownLevel } from './rules/unknown-level.ts';
import { readTable, type Table } from './table.ts';
import { treatmentKeeper } from './treatment-words.ts';

const file = 'layout.csv';

/** Reads layout.csv. */
export function readLayout(bytes: Uint8Array, metadata: Metadata, report: Report): Layout {
  const containers = metadata.draft.containers ?? [];
  const factors = metadata.draft.factors ?? [];
  const grid = emptyGrid(containers);
  const positions: Position[] = [];
  const starts: number[] = [];
  let isWhole = !metadata.lost.has('containers');
  let isSound = !metadata.lost.has('factors');
  const given = (factor: Factor): boolean =>
    containers.every(({ treatment }) => ownValue(treatment, factor.id) !== undefined);
  const needed = ['container', 'row', 'column', ...factors.filter((one) => !given(one)).map(({ id }) => id)];
  const optional = ['block', 'plot', 'plants', ...factors.filter(given).map(({ id }) => id)];
  const closed = !metadata.lost.has('factors');
  const form = {
    file,
    bytes,
    needed,
    optional,
    lenient: true,
    closed,
    needRows: true,
    ...companionForm(metadata, bytes),
  };
  const { table, faulty } = readTable(form, report, (opened) => {
    const spotOf = spotReader(
      opened,
      grid.containers,
      !metadata.lost.has('containers'),
      report,
      () => (isWhole = false),
    );
    const rest = restReader(opened, grid.containers, factors, closed, () => (isSound = false), report);
    return (row, isRagged) => {
      const spot = isRagged ? null : spotOf(row);
      if (spot === null) {
        isWhole = false;
        return;
      }
      const before = grid.put(spot.container, spot.row, spot.column, positions.length);
      if (before === -1) {
        positions.push(rest(row, spot));
        starts.push(row.start);
      } else {
        isWhole = false;
        reportPositionTwice(report, opened, row, spot, positions[before]?.line ?? 0);
      }
    };
  });
  const complete = isWhole && !faulty && table !== null;
  return { table, positions, starts, grid, complete, treated: complete && isSound };
}

/** A reader of what a row says beyond its place. */
function restReader(
  table: Table,
  containers: ReadonlyMap<string, Container>,
  factors: readonly Factor[],
  levelsKnown: boolean,
  onUnknown: () => void,
  report: Report,
): (row: CsvRow, spot: Spot) => Position {
  const cell = (row: CsvRow, name: string): string | null => {
    const index = table.index.get(name);
    return index === undefined ? null : trimmed(row.cells[index] ?? '');
  };
  const levels = new Map(factors.map(({ id, levels: all }) => [id, new Set(all.map((level) => level.id))]));
  const blockOf = (row: CsvRow, container: Container): string | null => {
    const text = cell(row, 'block');
    const own = container.block ?? null;
    if (text === null || text === '') {
      if (text === '' && own === null)
        reportBlankCell(report, table, row, 'block', say('give every position its block'), container.id);
      return own;
    }
    if (own !== null && own !== text) {
      reportLayoutAndContainerDiffer(report, table, row, 'block', {
        layout: text,
        container: own,
        id: container.id,
      });
    }
    return text;
  };
  const levelOf = (row: CsvRow, spot: Spot, factor: Factor, own: string | undefined): string => {
    const text = cell(row, factor.id);
    if (text === null) return own ?? '';
    if (text === '') {
      if (own === undefined)
        reportBlankCell(
          report,
          table,
          row,
          factor.id,
          say('every position of the layout has a treatment'),
          whereOf(spot),
        );
      if (own === undefined) onUnknown();
      return own ?? '';
    }
    if (!levels.get(factor.id)?.has(text)) {
      onUnknown();
      // Where a level was refused in trial.yaml, the cell may mean that one.
      if (levelsKnown) reportUnknownLevel(report, table, row, factor, text, whereOf(spot));
    } else if (own !== undefined && own !== text && levels.get(factor.id)?.has(own)) {
      reportLayoutAndContainerDiffer(report, table, row, factor.id, {
        layout: text,
        container: own,
        id: spot.container,
      });
    }
    return text;
  };
  const keep = treatmentKeeper(factors.map(({ id }) => id));
  return (row, spot) => {
    const container = containers.get(spot.container)!;
    const treatment = keep(
      factors.map((one) => levelOf(row, spot, one, ownValue(container.treatment, one.id))),
    );
    const plants = cell(row, 'plants') ?? '';
    const count = plants === '' ? plantsPerPot(treatment) : readCount(table, row, 'plants', plants, report);
    if (count !== null && count > mostPlants) reportTooManyPlants(report, table, row, count, whereOf(spot));
    const plot = cell(row, 'plot') ?? '';
    return {
      container: spot.container,
      row: spot.row,
      column: spot.column,
      treatment,
      block: blockOf(row, container),
      plot: plot === '' ? null : plot,
      plants: Math.min(count ?? 1, mostPlants),
      line: row.line,
    };
  };
}
