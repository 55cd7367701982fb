import { treatmentName } from '../compute/format/level-names.ts';
import type { Figure, FigureTable } from '../model/figure.ts';
import { say } from '../model/say.ts';
import type { Container, Position, Trial } from '../model/trial.ts';
import { distinct, figureId } from './figure-id.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import { gridMap, type MapCell } from './grid-map.ts';
import { nameKey } from './map-keys.ts';
import { placeName } from './position-table.ts';
import { shortNames } from './short-names.ts';
import { drawing } from './svg.ts';

interface Shared {
  nameOf: (position: Position) => string;
  short: ReadonlyMap<string, string>;
}

/**
 * The map of each container before anything is weighed, turned the way the harvester will stand: what is to
 * stand at each position. A container of one treatment names it in its heading.
 */
export function drawLayoutMaps(trial: Trial, options: FigureOptions = {}): Figure[] {
  const { names } = withDefaults(trial, options);
  const nameOf = (position: Position) => treatmentName(trial, position.treatment, names);
  const shared: Shared = { nameOf, short: shortNames(trial.positions.map(nameOf)) };
  const containers = trial.metadata.containers
    .map((container) => ({ container, positions: trial.positions.filter(inContainer(container)) }))
    .filter(({ positions }) => positions.length > 0);
  const ids = distinct(containers.map(({ container }) => figureId('layout-map', container.id)));
  return containers.map(({ container, positions }, index) =>
    drawContainer(container, positions, ids[index]!, shared),
  );
}

function inContainer({ id }: Container): (position: Position) => boolean {
  return ({ container }) => container === id;
}

function drawContainer(
  container: Container,
  positions: readonly Position[],
  id: string,
  { nameOf, short }: Shared,
): Figure {
  const used = [...new Set(positions.map(nameOf))];
  const only = used.length === 1 ? used[0]! : null;
  const cells = Array.from({ length: container.rows * container.columns }, (_, index): MapCell => {
    const row = 1 + Math.floor(index / container.columns);
    const column = 1 + (index % container.columns);
    const position = positions.find((each) => each.row === row && each.column === column);
    if (!position) return { row, column, shade: 'outside', number: null, name: null, statuses: [] };
    const full = nameOf(position);
    const name = only === null ? { full, short: short.get(full) ?? full } : null;
    return { row, column, shade: 'blank', number: null, name, statuses: [] };
  });
  const map = gridMap(container, cells, only === null ? container.id : `${container.id}: ${only}`);
  const key = nameKey(
    new Map(only === null && map.shortNames ? used.map((name) => [name, short.get(name) ?? name]) : []),
    { x: 2, y: map.height + 6, width: map.width - 4 },
  );
  const title = say('{container}: what stands where', { container: container.id });
  const said = used
    .map((name) => {
      const count = positions.filter((position) => nameOf(position) === name).length;
      return say('{name}: {count} positions.', { name, count });
    })
    .join(' ');
  const description = [said];
  return {
    id,
    title,
    description,
    svg: drawing(
      { id, title, description, kind: 'layout-map' },
      { width: map.width, height: map.height + 6 + key.height },
      map.svg,
      key.svg,
    ),
    table: layoutTable(title, positions, nameOf),
  };
}

function layoutTable(
  caption: string,
  positions: readonly Position[],
  nameOf: (position: Position) => string,
): FigureTable {
  const withBlock = positions.some(({ block }) => block !== null);
  const withPlot = positions.some(({ plot }) => plot !== null);
  const column = (heading: string) => ({ heading, numeric: false });
  return {
    caption,
    columns: [
      column(say('Position')),
      column(say('Treatment')),
      ...(withBlock ? [column(say('Block'))] : []),
      ...(withPlot ? [column(say('Plot'))] : []),
      { heading: say('Plants set'), numeric: true },
    ],
    rows: positions.map((position) => [
      placeName(position),
      nameOf(position),
      ...(withBlock ? [position.block ?? ''] : []),
      ...(withPlot ? [position.plot ?? ''] : []),
      String(position.plants),
    ]),
  };
}
