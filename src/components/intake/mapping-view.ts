/** How a sheet is read, shown as fields that the grower can set. */
import { headingParts } from '../../intake/find-headings.ts';
import { gridOf, type Grid } from '../../intake/grid.ts';
import type { KnownTrial } from '../../intake/known.ts';
import type { ColumnUse, Mapping } from '../../intake/mapping.ts';
import { rangeOf } from '../../intake/source-entry.ts';
import { say } from '../../model/say.ts';
import type { Sheet } from '../../model/workbook.ts';
import { make } from '../weigh/dom.ts';
import { checkField, choiceField, textField } from './fields.ts';
import { useControls } from './use-controls.ts';
import { without } from '../../model/without.ts';

/** What is done when a field was set. */
export interface Settings {
  /** A change within the table: only what comes of it is shown anew. */
  change(mapping: Mapping): void;
  /** Another row of headings, or the table turned: everything is read anew. */
  readAnew(headings: string, isTurned: boolean): void;
}

const cellsShown = 3;

/** The fields of one sheet. */
export function mappingView(
  sheet: Sheet,
  mapping: Mapping,
  known: KnownTrial,
  guesses: readonly string[],
  settings: Settings,
): HTMLElement {
  const grid = gridOf(sheet, mapping.isTurned);
  const now = { ...mapping, uses: new Map(mapping.uses), always: { ...mapping.always } };
  const change = (): void => {
    settings.change({ ...now, uses: new Map(now.uses) });
  };
  return make(
    'div',
    {},
    make(
      'div',
      { class: 'fields' },
      headingsField(grid, mapping, settings),
      rangeField(say('First and last row of data'), rangeText(grid, mapping.lines), grid, (lines) => {
        now.lines = lines;
        change();
      }),
      leftOutField(grid, mapping, (leftOut) => {
        now.leftOut = leftOut;
        change();
      }),
      textField(say('Container of every row'), mapping.always.container ?? '', (text) => {
        const always = without(now.always, 'container');
        now.always = text === '' ? always : { ...always, container: text };
        change();
      }),
      choiceField(
        say('Decimal mark of numbers that are text'),
        mapping.decimal ?? '',
        [
          ...(mapping.decimal === null ? [['', say('not clear')] as const] : []),
          ['.', say('point')],
          [',', say('comma')],
        ],
        (decimal) => {
          now.decimal = decimal === ',' || decimal === '.' ? decimal : null;
          change();
        },
      ),
      choiceField(
        say('Dates in digits'),
        mapping.dates ?? '',
        [
          ['', say('say it themselves')],
          ['day first', say('day first')],
          ['month first', say('month first')],
        ],
        (dates) => {
          now.dates = dates === 'day first' || dates === 'month first' ? dates : null;
          change();
        },
      ),
      checkField(say('Each plant has a column, not a row'), mapping.isTurned, (isTurned) => {
        settings.readAnew(rangeText(grid, mapping.headings), isTurned);
      }),
    ),
    ...guesses.map((guess) => make('p', { class: 'note', text: say('Guessed: {guess}', { guess }) })),
    columnsTable(grid, now, known, change),
  );
}

function rangeText(grid: Grid, [first, last]: readonly [number, number]): string {
  return first === last ? grid.lineName(first) : `${grid.lineName(first)}-${grid.lineName(last)}`;
}

function rangeField(
  label: string,
  value: string,
  grid: Grid,
  set: (range: readonly [number, number]) => void,
): HTMLElement {
  const field = textField(label, value, (text) => {
    const range = rangeOf(text.toUpperCase(), grid.isTurned);
    field.querySelector('input')!.setAttribute('aria-invalid', String(range === null));
    if (range !== null) set(range);
  });
  return field;
}

function headingsField(grid: Grid, mapping: Mapping, { readAnew }: Settings): HTMLElement {
  return rangeField(say('Row or rows of headings'), rangeText(grid, mapping.headings), grid, (range) => {
    readAnew(rangeText(grid, range), mapping.isTurned);
  });
}

function leftOutField(grid: Grid, mapping: Mapping, set: (lines: number[]) => void): HTMLElement {
  const value = mapping.leftOut.map(grid.lineName).join(', ');
  const field = textField(say('Rows left out, such as totals'), value, (text) => {
    const parts = text.split(',').map((part) => part.trim().toUpperCase());
    const ranges = parts.filter((part) => part !== '').map((part) => rangeOf(part, grid.isTurned));
    const isClear = ranges.every((range) => range !== null);
    field.querySelector('input')!.setAttribute('aria-invalid', String(!isClear));
    if (isClear)
      set(
        ranges.flatMap(([first, last]) =>
          Array.from({ length: last - first + 1 }, (_, index) => first + index),
        ),
      );
  });
  return field;
}

/** A row for each column of the sheet: its heading, its first cells, and what it is taken for. */
function columnsTable(
  grid: Grid,
  mapping: Mapping & { uses: Map<number, ColumnUse> },
  known: KnownTrial,
  change: () => void,
): HTMLElement {
  const [first, last] = mapping.headings;
  const rows = Array.from({ length: grid.width }, (_, field) => field).flatMap((field) => {
    const heading = headingParts(grid, first, last, field).join(' ');
    const cells = grid.lines
      .slice(mapping.lines[0], mapping.lines[1] + 1)
      .flatMap((line) => line[field]?.text ?? []);
    if (heading === '' && cells.length === 0) return [];
    return make(
      'tr',
      {},
      make('th', { text: grid.fieldName(field), attributes: { scope: 'row' } }),
      make('td', { text: heading }),
      make('td', { class: 'cells', text: cells.slice(0, cellsShown).join(' · ') }),
      make('td', {}, useControls(grid.fieldName(field), field, mapping, known, change)),
    );
  });
  const head = [say('Column'), say('Heading'), say('First cells'), say('Is taken for')].map((text) =>
    make('th', { text, attributes: { scope: 'col' } }),
  );
  return make(
    'div',
    {
      class: 'wide-table',
      attributes: { tabindex: '0', role: 'region', 'aria-label': say('What each column is taken for') },
    },
    make(
      'table',
      { class: 'columns' },
      make('thead', {}, make('tr', {}, ...head)),
      make('tbody', {}, ...rows),
    ),
  );
}
