import { showText } from '../check/show-value.ts';
import { hasError, type Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Workbook } from '../model/workbook.ts';
import { setInYaml, type YamlValue } from '../read/edit-yaml.ts';
import { sha256 } from '../read/sha256.ts';
import { rowsText } from '../weigh/rows-text.ts';
import { plantOf, withCuts } from './cuts-by-day.ts';
import { harvestTable } from './harvest-table.ts';
import { cellInWords, inSheet, intakeProblem } from './intake-problem.ts';
import { newTrial, type KnownTrial } from './known.ts';
import { againstLayout, layoutText, toldPositions, type ToldPosition } from './layout-of-rows.ts';
import type { Mapping } from './mapping.ts';
import { newTrialYaml, withCultivarIds, type NewTrialAnswers } from './new-trial.ts';
import { cellsNotUsed, type NotUsed } from './not-used.ts';
import type { Target } from './open-target.ts';
import { seenOtherwise } from './seen-otherwise.ts';
import { sourceEntry, type SourceEntry } from './source-entry.ts';
import { takeRows, type TakenRow } from './take-rows.ts';

/** A spreadsheet to be brought in. */
export interface Given {
  /** Its own name, without folders. */
  name: string;
  bytes: Uint8Array;
  sha256: string;
  workbook: Workbook;
}

/** What comes of bringing a spreadsheet in. */
export interface Intake {
  rows: readonly TakenRow[];
  /** Faults of the spreadsheet or of how it is read: with one, nothing is written. */
  problems: readonly Problem[];
  notUsed: readonly NotUsed[];
  /** Cells that were used, as `Harvest!D7`, and what each was taken for. */
  used: ReadonlyMap<string, string>;
  /** Files to be written, by path in the trial's folder; null where there are problems. */
  files: ReadonlyMap<string, Uint8Array> | null;
  /** What a reader should know of it, in sentences. */
  remarks: readonly string[];
}

/** Where a spreadsheet goes: a trial's folder, or a new one of which the answers tell. */
export type Destination = { target: Target } | { answers: NewTrialAnswers; today: string };

const encoder = new TextEncoder();

/** Brings a spreadsheet in as its mappings say: the files of the trial's folder, and what became of every cell. */
export function bringIn(given: Given, mappings: readonly Mapping[], destination: Destination): Intake {
  const known = 'target' in destination ? destination.target.known : newTrial;
  const file = `source/${given.name}`;
  const tables = mappings.flatMap((mapping) => {
    const sheet = given.workbook.sheets.find(({ name }) => name === mapping.sheet);
    return sheet === undefined ? [] : [{ mapping, taken: takeRows(given.name, sheet, mapping, known) }];
  });
  const rows = withCuts(
    tables.flatMap(({ taken }) => taken.rows),
    known.cuts,
  );
  const told = toldPositions(given.name, rows);
  const problems = [
    ...tables.flatMap(({ taken }) => taken.problems),
    ...twice(given.name, rows),
    ...told.problems,
    ...(mappings.length === 0 ? [withoutTable(given)] : []),
  ];
  const used = new Map(
    tables.map(({ mapping, taken }) => [mapping.sheet, { mapping, used: taken.used, notes: taken.notes }]),
  );
  const notUsed = cellsNotUsed(given.workbook, used);
  const harvest = harvestTable(rows, known);
  const made = problems.length > 0 ? null : filesOf(destination, known, told.positions, rows, given.name);
  if (made !== null && 'problems' in made) problems.push(...made.problems);
  const entries = mappings.map((mapping) => sourceEntry(file, given.sha256, mapping));
  const files =
    made === null || !('yaml' in made) || hasError(problems)
      ? null
      : new Map([
          ['trial.yaml', encoder.encode(yamlWith(made.yaml, harvest.units, entries))],
          ...(made.layout === null ? [] : [['layout.csv', encoder.encode(made.layout)] as const]),
          ['harvest.csv', encoder.encode(harvest.text)],
          [file, given.bytes],
          ...(notUsed.length === 0
            ? []
            : [[`${file}.not-used.csv`, encoder.encode(notUsedText(notUsed))] as const]),
        ]);
  return {
    rows,
    problems,
    notUsed,
    used: new Map(
      tables.flatMap(({ mapping, taken }) =>
        [...taken.used].map(([cell, what]) => [inSheet(mapping.sheet, cell), what] as const),
      ),
    ),
    files,
    remarks: [
      ...remarksOf(given, destination, harvest.converted),
      ...seenOtherwise(given.workbook, mappings),
    ],
  };
}

function withoutTable({ name }: Given): Problem {
  return {
    ...intakeProblem('spreadsheet-without-table', { file: name, sheet: '', row: 0, column: 0 }, ''),
    line: null,
    column: null,
    message: say(
      'No table of harvested plants is found: a row of headings is needed that names the container, row and column of each plant, and its weight.',
    ),
  };
}

type Made = { yaml: string; layout: string | null } | { problems: readonly Problem[] };

function filesOf(
  destination: Destination,
  known: KnownTrial,
  told: readonly ToldPosition[],
  rows: readonly TakenRow[],
  name: string,
): Made {
  if ('answers' in destination) {
    const { answers, today } = destination;
    const layout = layoutText(name, withCultivarIds(told), known);
    return 'problems' in layout
      ? layout
      : { yaml: newTrialYaml(answers, told, rows, today), layout: layout.text };
  }
  const { files, positions } = destination.target;
  const yaml = new TextDecoder().decode(files.get('trial.yaml'));
  if (positions !== null) {
    const problems = againstLayout(name, told, positions);
    return problems.length > 0 ? { problems } : { yaml, layout: null };
  }
  const layout = layoutText(name, told, known);
  return 'problems' in layout ? layout : { yaml, layout: layout.text };
}

/** trial.yaml with how the spreadsheet was read, and the units that harvest.csv is now written in. */
function yamlWith(
  source: string,
  units: ReadonlyMap<string, string>,
  entries: readonly SourceEntry[],
): string {
  const columns = Object.fromEntries([...units].map(([id, unit]) => [id, { column: id, unit }]));
  const hasOwn = /^\s*"?harvest"?\s*:/m.test(source);
  const withUnits =
    units.size > 0
      ? setInYaml(source, ['harvest'], { columns })
      : hasOwn
        ? setInYaml(source, ['harvest'], {})
        : source;
  return setInYaml(withUnits, ['sources'], entries as unknown as YamlValue);
}

/** A plant that stands in two rows of the same cut. */
function twice(file: string, rows: readonly TakenRow[]): Problem[] {
  const seen = new Map<string, TakenRow>();
  return rows.flatMap((row) => {
    const { container, row: line, column, plant, cut } = row.keys;
    const name = `${plantOf(row)}|${cut}`;
    const before = seen.get(name);
    if (before === undefined) {
      seen.set(name, row);
      return [];
    }
    const message = say('{place} stands here a second time; the first is {cell}.', {
      place: [container, line, column, ...(plant === '' ? [] : [say('plant {plant}', { plant })])].join(' '),
      cell: cellInWords({ file, ...before.from }),
    });
    return [intakeProblem('spreadsheet-twice', { file, ...row.from }, message)];
  });
}

const notUsedText = (cells: readonly NotUsed[]): string =>
  rowsText([['cell', 'text', 'why'], ...cells.map(({ cell, text, why }) => [cell, text, why])]);

function isAnother(destination: Destination, path: string, bytes: Uint8Array): boolean {
  const before = 'target' in destination ? destination.target.files.get(path) : undefined;
  return before !== undefined && sha256(before) !== sha256(bytes);
}

function remarksOf(
  { workbook, name, bytes }: Given,
  destination: Destination,
  converted: readonly string[],
): string[] {
  const filled = 'target' in destination ? destination.target.filled : 0;
  return [
    ...(workbook.encoding === null
      ? []
      : [
          say('The file is not UTF-8; it was read as {encoding}: look at names with accents.', {
            encoding: workbook.encoding,
          }),
        ]),
    ...(isAnother(destination, `source/${name}`, bytes)
      ? [say('{name} is there already with other content; it would be replaced.', { name: `source/${name}` })]
      : []),
    ...(workbook.covered.length === 0
      ? []
      : [
          say('Hidden under joined cells, and not used: {texts}.', {
            texts: workbook.covered.slice(0, 20).map(showText).join(', '),
          }),
        ]),
    ...(filled === 0
      ? []
      : [say('harvest.csv has values in {filled} rows already; they would be replaced.', { filled })]),
    ...converted.map((column) =>
      say('{column} stands in several units; all of it is converted to the unit of the trial.', { column }),
    ),
  ];
}
