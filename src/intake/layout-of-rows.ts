import { showText } from '../check/show-value.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Position } from '../model/trial.ts';
import { rowsText } from '../weigh/rows-text.ts';
import { cellInWords, intakeProblem } from './intake-problem.ts';
import type { KnownTrial } from './known.ts';
import type { TakenRow } from './take-rows.ts';

/** A position as the rows of a spreadsheet tell of it. */
export interface ToldPosition {
  container: string;
  row: number;
  column: number;
  levels: ReadonlyMap<string, string>;
  block: string;
  plot: string;
  /** Plants set: as a column says, else the highest plant that is numbered. */
  plants: number;
  from: TakenRow['from'];
}

/** The positions that rows tell of, in the order in which they come; and where two rows contradict each other. */
export function toldPositions(
  file: string,
  rows: readonly TakenRow[],
): { positions: readonly ToldPosition[]; problems: Problem[] } {
  const positions = new Map<string, ToldPosition>();
  const problems: Problem[] = [];
  for (const row of rows) {
    const { container, row: line, column, plant } = row.keys;
    const name = `${container} ${line} ${column}`;
    const plants = Number(row.plants === '' ? (plant === '' ? 1 : plant) : row.plants);
    const before = positions.get(name);
    if (before === undefined) {
      const place = { container, row: Number(line), column: Number(column) };
      const { block, plot, from } = row;
      positions.set(name, { ...place, levels: new Map(row.levels), block, plot, plants, from });
      continue;
    }
    const fault = contradiction(before, row);
    if (fault !== null)
      problems.push(intakeProblem('spreadsheet-layout', { file, ...row.from }, `${name}: ${fault}`));
    positions.set(name, {
      ...before,
      levels: new Map([...row.levels, ...before.levels]),
      block: before.block || row.block,
      plot: before.plot || row.plot,
      plants: Math.max(before.plants, plants),
    });
  }
  return { positions: [...positions.values()], problems };
}

function contradiction({ levels, from, block, plot }: ToldPosition, row: TakenRow): string | null {
  for (const [known, found] of [
    [block, row.block],
    [plot, row.plot],
  ] as const) {
    if (known === '' || found === '' || known === found) continue;
    return say('{found} is said of this place by this row, and {known} by the row of {cell}.', {
      found: showText(found),
      known: showText(known),
      cell: cellInWords({ file: '', ...from }),
    });
  }
  for (const [factor, level] of row.levels) {
    const known = levels.get(factor);
    if (known === undefined || known === level) continue;
    return say('{found} grew here by this row, and {known} by the row of {cell}.', {
      found: showText(level),
      known: showText(known),
      cell: cellInWords({ file: '', ...from }),
    });
  }
  return null;
}

/** layout.csv of positions whose every treatment is told; or why it cannot be written. */
export function layoutText(
  file: string,
  positions: readonly ToldPosition[],
  { factors }: KnownTrial,
): { text: string } | { problems: Problem[] } {
  const problems: Problem[] = [];
  const optional = (['block', 'plot'] as const).filter((key) => positions.some((one) => one[key] !== ''));
  const rows = positions.map((position) => {
    const levels = factors.map(({ id, name }) => {
      const level = position.levels.get(id);
      if (level === undefined)
        problems.push(
          intakeProblem(
            'spreadsheet-layout',
            { file, ...position.from },
            say('nothing says the {factor} of this place, and the trial has no layout.csv yet.', {
              factor: name,
            }),
          ),
        );
      return level ?? '';
    });
    const { container, row, column } = position;
    return [
      container,
      String(row),
      String(column),
      ...levels,
      ...optional.map((key) => position[key]),
      String(position.plants),
    ];
  });
  if (problems.length > 0) return { problems: problems.slice(0, mostProblems) };
  const heading = ['container', 'row', 'column', ...factors.map(({ id }) => id), ...optional, 'plants'];
  return { text: rowsText([heading, ...rows]) };
}

/** A column that is lacking is lacking in every row: the first few say enough. */
const mostProblems = 5;

/** Where the rows contradict the layout that the trial has: each place once. */
export function againstLayout(
  file: string,
  told: readonly ToldPosition[],
  positions: readonly Position[],
): Problem[] {
  const known = new Map(positions.map((one) => [`${one.container} ${one.row} ${one.column}`, one]));
  return told.flatMap(({ container, row, column, levels, block, plot, from }) => {
    const place = known.get(`${container} ${row} ${column}`);
    if (place === undefined) return [];
    const said = [
      ...[...levels].map(([factor, level]) => [level, place.treatment[factor]] as const),
      ...(block === '' ? [] : [[block, place.block] as const]),
      ...(plot === '' ? [] : [[plot, place.plot] as const]),
    ];
    return said.flatMap(([level, laid]) => {
      if (laid === undefined || laid === null || laid === '' || laid === level) return [];
      const message = say('{level} by the spreadsheet, and {laid} by the layout of the trial.', {
        level: showText(level),
        laid: showText(laid),
      });
      return [
        intakeProblem('spreadsheet-layout', { file, ...from }, message, { found: level, expected: laid }),
      ];
    });
  });
}
