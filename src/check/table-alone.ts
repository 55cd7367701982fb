import { openCsv, type Csv } from '../read/csv.ts';
import { say } from '../model/say.ts';
import { decodeUtf8 } from '../read/utf8.ts';
import { trimmed, type DecimalMark } from './number.ts';

/** A table of weights that came without its trial's folder, as far as its headings tell. */
export interface TableAlone {
  csv: Csv;
  decimal: DecimalMark;
  headings: readonly string[];
  /** Our name of a column to its index. */
  index: ReadonlyMap<string, number>;
  /** Index of the column of weights. */
  weight: number;
  /** The unit that the heading of the weights names; null where it names none. */
  unit: WeightUnit | null;
  /** Headings of columns that say nothing that is asked here. */
  unused: readonly string[];
}

export type WeightUnit = 'g' | 'kg' | 'oz' | 'lb';

/** The columns that are read as harvest.csv's; the others belong to the layout, or to nothing that is asked. */
export const readAsHarvest = [
  'container',
  'row',
  'column',
  'cut',
  'date',
  'plant',
  'status',
  'pot_total',
  'remark',
];

/** The headings that the reading of harvest.csv is to pass over. */
export function passedOver({ headings, index, weight }: TableAlone): string[] {
  const read = new Set([weight, ...readAsHarvest.map((name) => index.get(name) ?? -1)]);
  return headings.filter((heading, at) => heading !== '' && !read.has(at));
}

/** What each row must say, so that a table can stand for a trial. */
const needed = ['container', 'row', 'column', 'cultivar'] as const;
const optional = ['block', 'plot', 'plants', 'cut', 'date', 'plant', 'status', 'pot_total', 'remark'];
const otherWords: Readonly<Record<string, string>> = {
  col: 'column',
  variety: 'cultivar',
  tank: 'container',
  remarks: 'remark',
  note: 'remark',
  notes: 'remark',
};

/** Reads the headings of a table, whatever its separators; or says what it lacks, in sentences. */
export function readTableAlone(bytes: Uint8Array): TableAlone | { lacks: readonly string[] } {
  const { text } = decodeUtf8(bytes);
  if (text === null)
    return { lacks: [say('It is not UTF-8 text: save it from the spreadsheet as CSV UTF-8.')] };
  const csv = openCsv(text, delimiterOf(text));
  const headings = firstRow(csv);
  const index = new Map<string, number>();
  for (const [at, heading] of headings.entries()) {
    const name = nameOf(heading);
    if (name !== null && !index.has(name)) index.set(name, at);
  }
  const others = headings.flatMap((heading, at) => (heading === '' || nameOf(heading) !== null ? [] : [at]));
  const weight = others.find((at) => /weight|mass|yield|\bwt\b|\bg\b/i.test(headings[at]!)) ?? others[0];
  const lacking = needed.filter((name) => !index.has(name)).map((name) => say('the column {name}', { name }));
  if (weight === undefined) lacking.push(say('a column of weights'));
  if (weight === undefined || lacking.length > 0) return { lacks: [lacksSentence(lacking)] };
  return {
    csv,
    decimal: decimalOf(csv, weight),
    headings,
    index,
    weight,
    unit: unitOf(headings[weight]!),
    unused: others.filter((at) => at !== weight).map((at) => headings[at]!),
  };
}

function lacksSentence(lacking: readonly string[]): string {
  const last = lacking.at(-1)!;
  const list =
    lacking.length === 1 ? last : say('{list} and {last}', { list: lacking.slice(0, -1).join(', '), last });
  return say(
    'The table lacks {list}: without the place and cultivar of each weight nothing can be said of what grew where. Add them, or give the folder of the trial.',
    { list },
  );
}

function nameOf(heading: string): string | null {
  const plain = heading.toLowerCase().replaceAll(/[\s-]+/g, '_');
  const name = otherWords[plain] ?? plain;
  return ([...needed, ...optional] as string[]).includes(name) ? name : null;
}

function delimiterOf(text: string): string {
  const [line = ''] = text.trimStart().split(/[\r\n]/, 1);
  const counted = [',', ';', '\t', '|'].map((sign) => ({ sign, count: line.split(sign).length }));
  return counted.reduce((most, one) => (one.count > most.count ? one : most)).sign;
}

function firstRow(csv: Csv): string[] {
  let headings: string[] | null = null;
  csv.read(({ cells }) => {
    headings ??= cells.map(trimmed);
  });
  return headings ?? [];
}

/** A comma, where the weights have one between digits and none has a point. */
function decimalOf(csv: Csv, weight: number): DecimalMark {
  let commas = 0;
  let points = 0;
  csv.read(({ cells }) => {
    const cell = cells[weight] ?? '';
    if (/^\s*\d+,\d+\s*$/.test(cell)) commas += 1;
    else if (/^\s*\d+\.\d+\s*$/.test(cell)) points += 1;
  });
  return commas > 0 && points === 0 && csv.delimiter !== ',' ? ',' : '.';
}

function unitOf(heading: string): WeightUnit | null {
  return (/(?:^|[\s_(,])(g|kg|oz|lb)\)?$/i.exec(heading)?.[1]?.toLowerCase() ?? null) as WeightUnit | null;
}
