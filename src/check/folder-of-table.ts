import type { TrialMetadata } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { parseWhole, trimmed } from './number.ts';
import { readAsHarvest, type TableAlone, type WeightUnit } from './table-alone.ts';

/** What a table of weights does not say of its trial, and whoever grew it does. */
export interface TableAnswers {
  crop: { name: string; species?: string };
  /** The day of the harvest, year-month-day; rows may have dates of their own. */
  harvested: string;
  /** The season's name; its year is that of the harvest. */
  season: string;
  setting: TrialMetadata['site']['setting'];
  unit: WeightUnit;
  /** What the cultivars were allotted to. */
  allotted: TrialMetadata['design']['allotted'];
  /** Whether places were drawn by lot. */
  randomised: boolean;
}

interface Place {
  container: string;
  row: number;
  column: number;
  cultivar: string;
  block: string;
  plot: string;
  plants: number;
  line: number;
}

/**
 * The folder that a table alone stands for: harvest.csv is the table itself, byte for byte; layout.csv and
 * trial.yaml say what its other columns and the answers say. Where two rows give one place two cultivars, or none,
 * there is no layout: the faults are given instead, in sentences.
 */
export function folderOfTable(
  bytes: Uint8Array,
  table: TableAlone,
  answers: TableAnswers,
): { files: Map<string, Uint8Array>; faults: readonly string[] } {
  const { places, cuts, faults } = placesOf(table, answers.harvested);
  const metadata = metadataOf(table, answers, places, cuts);
  const utf8 = new TextEncoder();
  return {
    files: new Map([
      ['trial.yaml', utf8.encode(JSON.stringify(metadata))],
      ['layout.csv', utf8.encode(layoutOf(places))],
      ['harvest.csv', bytes],
    ]),
    faults,
  };
}

function placesOf(table: TableAlone, harvested: string) {
  const places = new Map<string, Place>();
  const dates = new Map<number, string>();
  const faults: string[] = [];
  let isHeading = true;
  table.csv.read(({ cells, line }) => {
    if (isHeading) {
      isHeading = false;
      return;
    }
    const cell = (name: string): string => trimmed(cells[table.index.get(name) ?? -1] ?? '');
    const [container, row, column] = [cell('container'), parseWhole(cell('row')), parseWhole(cell('column'))];
    const cut = parseWhole(cell('cut')) ?? 1;
    if (!dates.has(cut)) dates.set(cut, cell('date') || harvested);
    // A place that cannot be read is told of where harvest.csv is checked.
    if (container === '' || !row || !column) return;
    const key = `${container} ${String(row)} ${String(column)}`;
    const known = places.get(key);
    const cultivar = cell('cultivar');
    const plants = parseWhole(cell('plants')) ?? parseWhole(cell('plant')) ?? 1;
    if (known === undefined) {
      if (cultivar === '') faults.push(say('Line {line} names no cultivar.', { line }));
      places.set(key, {
        container,
        row,
        column,
        cultivar,
        block: cell('block'),
        plot: cell('plot'),
        plants,
        line,
      });
      return;
    }
    known.plants = Math.max(known.plants, plants);
    if (cultivar !== '' && cultivar !== known.cultivar)
      faults.push(
        say(
          'Line {line} has {cultivar} at {container} row {row} column {column}, but line {before} has {other} there.',
          { line, cultivar, container, row, column, before: known.line, other: known.cultivar },
        ),
      );
  });
  const last = Math.max(1, ...dates.keys());
  const cuts = Array.from({ length: Math.min(last, 60) }, (_, index) => dates.get(index + 1) ?? harvested);
  return { places: [...places.values()], cuts, faults };
}

function layoutOf(places: readonly Place[]): string {
  const hasBlocks = places.some(({ block }) => block !== '');
  const hasPlots = places.some(({ plot }) => plot !== '');
  const rows = places.map(({ container, row, column, cultivar, block, plot, plants }) => [
    container,
    String(row),
    String(column),
    idOf(cultivar),
    String(plants),
    ...(hasBlocks ? [block] : []),
    ...(hasPlots ? [plot] : []),
  ]);
  const head = ['container', 'row', 'column', 'cultivar', 'plants'];
  const headings = [...head, ...(hasBlocks ? ['block'] : []), ...(hasPlots ? ['plot'] : [])];
  return [headings, ...rows].map((cells) => `${cells.map(quoted).join(',')}\n`).join('');
}

const quoted = (cell: string): string => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** A cultivar's name as an id: lower-case letters, digits and hyphens. */
export function idOf(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
}

function metadataOf(
  table: TableAlone,
  answers: TableAnswers,
  places: readonly Place[],
  cuts: readonly string[],
): object {
  const names = new Map(places.map(({ cultivar }) => [idOf(cultivar), cultivar]));
  const heading = (name: string): object | undefined => {
    const own = table.headings[table.index.get(name) ?? -1];
    return own === undefined || own === name ? undefined : { column: own };
  };
  const columns = Object.fromEntries(
    readAsHarvest.map((name) => [name, heading(name)]).filter(([, own]) => own),
  );
  return {
    title: say('A trial of your own'),
    version: '1.0.0',
    status: 'finished',
    question: say('How does it stand among the others?'),
    crop: answers.crop,
    season: { year: Number(answers.harvested.slice(0, 4)), name: answers.season },
    dates: { cuts },
    site: { name: say('Your own'), setting: answers.setting },
    people: [{ name: say('You'), part: 'grower' }],
    licence: 'CC0-1.0',
    factors: [
      {
        id: 'cultivar',
        name: say('Cultivar'),
        kind: 'cultivar',
        levels: [...names].map(([id, name]) => ({ id, name })),
      },
    ],
    design: {
      arrangement: arrangementOf(places, answers.allotted),
      allotted: answers.allotted,
      randomised: answers.randomised,
    },
    containers: containersOf(places),
    variables: [
      { id: 'fresh_weight', name: say('Fresh weight'), of: 'plant', kind: 'measured', unit: answers.unit },
    ],
    harvest: {
      columns: { ...columns, fresh_weight: { column: table.headings[table.weight], unit: answers.unit } },
      delimiter: table.csv.delimiter,
      decimal: table.decimal,
    },
    releases: [{ version: '1.0.0', date: cuts.at(-1) }],
  };
}

/** The containers that places lie in, each as large as its last row and column. */
export function containersOf(
  places: readonly Pick<Place, 'container' | 'row' | 'column'>[],
): { id: string; kind: 'tank'; rows: number; columns: number }[] {
  const sizes = new Map<string, { rows: number; columns: number }>();
  for (const { container, row, column } of places) {
    const size = sizes.get(container) ?? { rows: 1, columns: 1 };
    sizes.set(container, { rows: Math.max(size.rows, row), columns: Math.max(size.columns, column) });
  }
  return [...sizes].map(([id, size]) => ({ id, kind: 'tank', ...size }));
}

/** What the layout bears out: blocks that hold every cultivar, replicates, or a cultivar with one unit alone. */
export function arrangementOf(
  places: readonly Pick<Place, 'container' | 'row' | 'column' | 'cultivar' | 'block' | 'plot'>[],
  allotted: TableAnswers['allotted'],
): TrialMetadata['design']['arrangement'] {
  const unitOf = ({ container, row, column, plot }: (typeof places)[number]): string =>
    allotted === 'container'
      ? container
      : allotted === 'plot' && plot !== ''
        ? plot
        : `${container} ${row} ${column}`;
  const units = new Map<string, Set<string>>();
  const blocks = new Map<string, Set<string>>();
  for (const place of places) {
    units.set(place.cultivar, (units.get(place.cultivar) ?? new Set()).add(unitOf(place)));
    blocks.set(place.block, (blocks.get(place.block) ?? new Set()).add(place.cultivar));
  }
  if ([...units.values()].some(({ size }) => size < 2)) return 'unreplicated';
  const isInBlocks = !blocks.has('') && blocks.size > 1;
  const isComplete = [...blocks.values()].every(({ size }) => size === units.size);
  return isInBlocks && isComplete ? 'randomised blocks' : 'completely randomised';
}
