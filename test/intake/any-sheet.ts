/** Trials of any shape, and the sheets on which their growers may have written the weights down. */
import { strToU8 } from 'fflate';
import fc from 'fast-check';
import { odsFile, xlsxFile, type MadeCell, type MadeSheet } from '../support/spreadsheets.ts';

/** What is so of a sheet; all of it is drawn. */
const choices = {
  salt: fc.nat(1_000_000),
  names: fc.constantFrom(
    ['T1', 'T2', 'T3'],
    ['A', 'B', 'C'],
    ['1', '2', '3'],
    ['SE', 'max', 'NW'],
    ['North tank', 'South tank', 'Mid'],
    ['T1', 'T11', 'T2'],
  ),
  containers: fc.integer({ min: 1, max: 3 }),
  rows: fc.integer({ min: 1, max: 4 }),
  columns: fc.constantFrom(1, 2, 3, 4, 12),
  plants: fc.constantFrom(1, 1, 2, 3),
  cuts: fc.constantFrom(1, 1, 2),
  /** What each column of values is of; `row` has one column for all. */
  by: fc.constantFrom('row', 'plant', 'cut', 'map'),
  container: fc.constantFrom('column', 'once', 'joined', 'title', 'sheet', 'unsaid'),
  place: fc.constantFrom(
    'row and column',
    'lettered row',
    '2-3',
    'dotted',
    'R2C3',
    'B3',
    'number',
    'with container',
  ),
  headings: fc.constantFrom('one line', 'joined above', 'days', 'bare numbers'),
  unit: fc.constantFrom('g', 'oz', 'kg'),
  unitIn: fc.constantFrom('heading', 'cells', 'format', 'some cells'),
  as: fc.constantFrom('numbers', 'numbers', 'text'),
  lost: fc.constantFrom('none', 'words', 'status column', 'left empty'),
  remarks: fc.boolean(),
  running: fc.boolean(),
  above: fc.integer({ min: 0, max: 3 }),
  aside: fc.integer({ min: 0, max: 2 }),
  totals: fc.constantFrom('none', 'labelled', 'formula', 'labelled number'),
  gaps: fc.boolean(),
  again: fc.boolean(),
  shuffled: fc.boolean(),
  turned: fc.constantFrom(false, false, false, true),
  slip: fc.constantFrom(
    ...Array.from({ length: 12 }, () => 'none' as const),
    'container forgotten',
    'place forgotten',
    'odd title',
    'title with a day',
    'row written twice',
    'numbers run on',
    'remark between',
    'narrower again',
  ),
  kind: fc.constantFrom('xlsx', 'ods', 'csv', 'csv with commas'),
} as const;

type Choices = {
  [name in keyof typeof choices]: (typeof choices)[name] extends fc.Arbitrary<infer T> ? T : never;
};

/** A plant at a cut, and what was written of it. */
interface Plant {
  container: string;
  row: number;
  column: number;
  plant: number;
  cut: number;
  /** In the sheet's unit; null where a status or nothing is said. */
  weight: number | null;
  status: string;
}

export interface AnySheet {
  choices: Choices;
  name: string;
  bytes: Uint8Array;
  trialYaml: string;
  layoutCsv: string;
  plants: readonly Plant[];
  /** The unit of its weights: that of the trial where the sheet says none anywhere. */
  unit: 'g' | 'oz' | 'kg';
}

const days = ['2025-10-20', '2025-11-10'];

/** Whole numbers that look drawn, from a salt and an index. */
function drawn(salt: number, index: number, below: number): number {
  let hash = (salt ^ Math.imul(index + 1, 0x9e3779b1)) >>> 0;
  hash = Math.imul(hash ^ (hash >>> 15), 0x85ebca6b) >>> 0;
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35) >>> 0;
  return ((hash ^ (hash >>> 16)) >>> 0) % below;
}

const span = (count: number): number[] => Array.from({ length: count }, (_, index) => index + 1);

export const anySheet: fc.Arbitrary<AnySheet> = fc.record(choices).map((given) => sheetOf(fitted(given)));

/** Choices that would contradict each other, made to agree. */
function fitted(given: Choices): Choices {
  const isMap = given.by === 'map';
  // A drawing turned over is another drawing, where nothing but numbers stand on both sides of it.
  const isDrawing = isMap && (given.headings === 'bare numbers' || given.headings === 'joined above');
  const container = given.container === 'unsaid' && given.containers > 1 ? 'sheet' : given.container;
  return {
    ...given,
    plants: isMap ? 1 : given.plants,
    cuts: isMap ? 1 : given.cuts,
    lost: given.lost === 'status column' && given.by !== 'row' ? 'words' : given.lost,
    container,
    turned: given.turned && container !== 'title' && !given.again && !isDrawing,
    kind: container === 'sheet' && given.kind.startsWith('csv') ? 'ods' : given.kind,
    unitIn: given.kind.startsWith('csv') && given.unitIn === 'format' ? 'cells' : given.unitIn,
  };
}

function sheetOf(given: Choices): AnySheet {
  const ids = given.names.slice(0, given.containers);
  const plants = ids.flatMap((container, at) => plantsOf(given, container, at));
  const sheets =
    given.container === 'sheet'
      ? ids.map((id) => tableOf(given, [id], plants, id))
      : [tableOf(given, ids, plants, given.container === 'unsaid' ? 'Weights' : 'Harvest')];
  const { kind } = given;
  const bytes =
    kind === 'xlsx'
      ? xlsxFile(sheets)
      : kind === 'ods'
        ? odsFile(sheets)
        : csvFile(sheets[0]!, kind === 'csv');
  return {
    choices: given,
    name: `weights.${kind.slice(0, 4).trim()}`,
    bytes,
    plants,
    unit: JSON.stringify(sheets).includes(given.unit) ? given.unit : 'g',
    trialYaml: trialYaml(given, ids),
    layoutCsv: layoutCsv(given, ids),
  };
}

function plantsOf(given: Choices, container: string, at: number): Plant[] {
  const { salt, columns, cuts, lost } = given;
  return span(given.rows).flatMap((row) =>
    span(columns).flatMap((column) =>
      span(given.plants).flatMap((plant) =>
        span(cuts).map((cut) => {
          const index = (((at * 5 + row) * 13 + column) * 4 + plant) * 3 + cut;
          const isLost = lost !== 'none' && drawn(salt, index, 6) === 0;
          const word = ['dead', 'not weighed', 'culled'][drawn(salt, index + 7, 3)]!;
          const draw = drawn(salt, index + 13, 4000);
          const weight = { g: (400 + draw) / 10, oz: (20 + (draw % 150)) / 8, kg: (100 + draw) / 1000 }[
            given.unit
          ];
          const status = isLost && lost !== 'left empty' ? word : '';
          return { container, row, column, plant, cut, weight: isLost ? null : weight, status };
        }),
      ),
    ),
  );
}

type Line = (MadeCell | null)[];

function tableOf(given: Choices, ids: readonly string[], plants: readonly Plant[], name: string): MadeSheet {
  const { container, slip } = given;
  const hasColumn = ['column', 'once', 'joined'].includes(container) && given.place !== 'with container';
  const rows: Line[] = span(given.above).map((line) => [line === 2 ? null : `Autumn lettuces, page ${line}`]);
  const joined: string[] = [];
  const headings = headingsOf(given, hasColumn);
  const pad = (line: Line): Line => [...Array.from({ length: given.aside }, () => null), ...line];
  const put = (line: Line): void => void rows.push(pad(line));
  const isTitled = container === 'title';
  if (!isTitled) for (const line of headings) put(line);
  ids.forEach((id, at) => {
    if (isTitled) {
      const odd = slip === 'odd title' && at === ids.length - 1 && at > 0;
      const title = odd ? 'the last tank' : /^\d|^.$/.test(id) ? `Tank ${id}` : id;
      put(slip === 'title with a day' && at > 0 ? [title, '20 October'] : [title]);
    }
    if (isTitled ? at === 0 || given.again : at > 0 && given.again) for (const line of headings) put(line);
    if (slip === 'narrower again' && at > 0) put(headings.at(-1)!.slice(0, -1));
    const from = rows.length;
    const lines = linesOf(
      given,
      hasColumn,
      id,
      at,
      plants.filter((one) => one.container === id),
    );
    lines.forEach((line, index) => {
      put(line);
      if (slip === 'remark between' && index === 0) put(['slugs at the edge']);
      if (given.gaps && index === 1) put([]);
    });
    if (hasColumn && container === 'joined' && rows.length - from > 1)
      joined.push(`${letter(given.aside)}${from + 1}:${letter(given.aside)}${rows.length}`);
    const width = headings.at(-1)!.length - (given.remarks ? 1 : 0);
    const blank = Array.from({ length: width - 2 }, () => null);
    const sum: MadeCell = { formula: 'SUM(Z1:Z2)', value: 1234 };
    if (given.totals === 'labelled') put(['Total', ...blank, sum]);
    if (given.totals === 'labelled number') put(['Total', ...blank, 1234]);
    if (given.totals === 'formula') put([null, ...blank, sum]);
  });
  if (!given.turned) return { name, rows, joined };
  const width = Math.max(...rows.map((row) => row.length));
  const across = Array.from({ length: width }, (_, column) => rows.map((row) => row[column] ?? null));
  return {
    name,
    rows: across,
    joined: joined.map((area) => {
      const [, left = '', top = '', , bottom = ''] = /^([A-Z])(\d+):([A-Z])(\d+)$/.exec(area)!;
      const row = left.charCodeAt(0) - 64;
      return `${letter(Number(top) - 1)}${row}:${letter(Number(bottom) - 1)}${row}`;
    }),
  };
}

const letter = (column: number): string =>
  (column >= 26 ? letter(Math.floor(column / 26) - 1) : '') + String.fromCharCode(65 + (column % 26));

function headingsOf(given: Choices, hasColumn: boolean): Line[] {
  const { by, place } = given;
  const unit = given.unit === 'g' || given.unitIn !== 'heading' ? '' : ` (${given.unit})`;
  const split = place === 'row and column' || place === 'lettered row';
  const keys = [
    ...(given.running ? ['Nr'] : []),
    ...(by === 'map' ? ['Row'] : split ? ['Row', 'Column'] : ['Position']),
    ...(by !== 'plant' && given.plants > 1 ? ['Plant'] : []),
    ...(by !== 'cut' && given.cuts > 1 ? ['Cut'] : []),
  ];
  const first = hasColumn ? ['Tank', ...keys] : keys;
  const after = [
    ...(given.lost === 'status column' ? ['Status'] : []),
    ...(given.remarks ? ['Remarks'] : []),
  ];
  const count = { row: 1, plant: given.plants, cut: given.cuts, map: given.columns }[by];
  if (by === 'row') return [[...first, `Weight${unit}`, ...after]];
  const word = { plant: 'Plant', cut: 'Cut', map: 'Column' }[by];
  const days_ = by === 'cut' && given.headings === 'days';
  const bare = given.headings === 'bare numbers' || given.headings === 'joined above';
  const heads = span(count).map((number): MadeCell =>
    days_ ? { date: days[number - 1]! } : bare ? number : `${word} ${number}${unit}`,
  );
  const line = [...first, ...heads, ...after];
  const above = [...first.map(() => null), ...heads.map(() => `Weight${unit}`)];
  return given.headings === 'joined above' || ((days_ || bare) && unit !== '') ? [above, line] : [line];
}

function linesOf(
  given: Choices,
  hasColumn: boolean,
  id: string,
  at: number,
  plants: readonly Plant[],
): Line[] {
  const { by } = given;
  const groups = new Map<string, Plant[]>();
  for (const one of plants) {
    const { row, column, plant, cut } = one;
    const name = {
      row: [row, column, plant, cut],
      plant: [row, column, cut],
      cut: [row, column, plant],
      map: [row],
    }[by].join(' ');
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  const all = [...groups.values()];
  if (given.shuffled)
    all.sort(([a], [b]) => drawn(given.salt, hashOf(a!), 99) - drawn(given.salt, hashOf(b!), 99));
  const chosen = drawn(given.salt, 99, all.length);
  const lines = all.map((group, index): Line => {
    const [one] = group as [Plant];
    const isSlip = index === chosen;
    const said = given.container !== 'once' && given.container !== 'joined' ? true : index === 0;
    const forgotten = given.slip === 'container forgotten' && isSlip;
    const place =
      given.slip === 'place forgotten' && isSlip
        ? placeOf(given, one, at).map(() => null)
        : placeOf(given, one, at);
    const lost = given.lost === 'status column' ? [one.status === '' ? null : one.status] : [];
    const remark = given.remarks ? [drawn(given.salt, index, 5) === 0 ? 'small' : null] : [];
    return [
      ...(hasColumn ? [said && !forgotten ? id : null] : []),
      ...(given.running ? [index + 1] : []),
      ...place,
      ...(by !== 'plant' && given.plants > 1 ? [one.plant] : []),
      ...(by !== 'cut' && given.cuts > 1 ? [one.cut] : []),
      ...group.map((plant, among) => valueOf(given, plant, index + among)),
      ...lost,
      ...remark,
    ];
  });
  if (given.slip === 'row written twice' && at === 0) lines.push(lines[chosen]!);
  return lines;
}

const hashOf = ({ row, column, plant, cut }: Plant): number => ((row * 13 + column) * 4 + plant) * 3 + cut;

function placeOf(given: Choices, { container, row, column }: Plant, at: number): Line {
  const lettered = String.fromCharCode(64 + row);
  if (given.by === 'map') return [given.place === 'lettered row' ? lettered : row];
  const number = (row - 1) * given.columns + column;
  const before = given.slip === 'numbers run on' ? at * given.rows * given.columns : 0;
  return {
    'row and column': [row, column],
    'lettered row': [lettered, column],
    '2-3': [`${row}-${column}`],
    // Row 1 column 10 is 1.1 to a spreadsheet.
    dotted: [Number(`${row}.${column}`)],
    R2C3: [`R${row}C${column}`],
    B3: [`${lettered}${column}`],
    number: [before + number],
    'with container': [`${container} R${row}C${column}`],
  }[given.place];
}

function valueOf(given: Choices, { weight, status }: Plant, index: number): MadeCell | null {
  if (weight === null) return status === '' || given.lost === 'status column' ? null : status;
  const hasUnit =
    given.unit !== 'g' && given.unitIn !== 'heading' && (given.unitIn !== 'some cells' || index % 2 === 0);
  if (hasUnit && given.unitIn === 'format') return { number: weight, behind: ` ${given.unit}` };
  if (hasUnit) return `${weight} ${given.unit}`;
  return given.as === 'text' ? String(weight) : weight;
}

function csvFile({ rows }: MadeSheet, isPoint: boolean): Uint8Array {
  const delimiter = isPoint ? ',' : ';';
  const mark = (text: string): string => (isPoint ? text : text.replace(/^(\d+)\.(\d+)/, '$1,$2'));
  const cell = (given: MadeCell | null): string => {
    if (given === null) return '';
    if (typeof given !== 'object') return mark(String(given));
    if ('date' in given) return given.date;
    return mark(String('formula' in given ? given.value : 'number' in given ? given.number : ''));
  };
  return strToU8(
    rows.map((row) => `${row.map((one) => quoted(cell(one), delimiter)).join(delimiter)}\r\n`).join(''),
  );
}

const quoted = (text: string, delimiter: string): string => (text.includes(delimiter) ? `"${text}"` : text);

function trialYaml(given: Choices, ids: readonly string[]): string {
  const containers = ids.map(
    (id) => `  - {id: "${id}", kind: tank, rows: ${given.rows}, columns: ${given.columns}}\n`,
  );
  return `title: Any trial
version: 1.0.0
status: finished
question: What became of the weights that were written down?
crop: {name: Lettuce, species: Lactuca sativa, cultivar: Cobalt Wren}
season: {year: 2025, name: autumn}
dates: {sown: 2025-08-25, cuts: [${days.slice(0, given.cuts).join(', ')}]}
site: {name: Fernhollow, country: IE, setting: rain shelter}
people: [{name: Imke Farrant, part: grower}]
licence: CC0-1.0
design: {arrangement: unreplicated, allotted: container, randomised: false}
containers:
${containers.join('')}variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g}
releases:
  - {version: 1.0.0, date: 2025-11-12, note: First release.}
`;
}

function layoutCsv(given: Choices, ids: readonly string[]): string {
  const lines = ids.flatMap((id) =>
    span(given.rows).flatMap((row) =>
      span(given.columns).map((column) => `${id},${row},${column},${given.plants}\n`),
    ),
  );
  return `container,row,column,plants\n${lines.join('')}`;
}
