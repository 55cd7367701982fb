/** How a sheet is read, shown as fields that the grower can set. */
import { usesOf } from '../../intake/corrections.ts';
import { headingParts } from '../../intake/find-headings.ts';
import { gridOf, type Grid } from '../../intake/grid.ts';
import type { KnownTrial } from '../../intake/known.ts';
import { placeForms, type ColumnUse, type Mapping } from '../../intake/mapping.ts';
import { rangeOf } from '../../intake/source-entry.ts';
import { isWeight } from '../../model/units.ts';
import { say } from '../../model/say.ts';
import type { Sheet } from '../../model/workbook.ts';
import { make } from '../weigh/dom.ts';
import { without } from './without.ts';

/** What is done when a field was set. */
export interface Settings {
  /** A change within the table: only what comes of it is shown anew. */
  change(mapping: Mapping): void;
  /** Another row of headings, or the table turned: everything is read anew. */
  readAnew(headings: string, isTurned: boolean): void;
}

const units = ['g', 'kg', 'oz', 'lb'];
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

function labelled(label: string, control: HTMLElement): HTMLElement {
  return make('label', { class: 'field' }, make('span', { text: label }), control);
}

function textField(label: string, value: string, set: (text: string) => void): HTMLElement {
  const input = make('input', { attributes: { type: 'text', autocomplete: 'off' } });
  input.value = value;
  input.addEventListener('change', () => {
    set(input.value.trim());
  });
  return labelled(label, input);
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

function choiceField(
  label: string,
  value: string,
  choices: readonly (readonly [string, string])[],
  set: (value: string) => void,
): HTMLElement {
  return labelled(label, choice(value, choices, set));
}

function choice(
  value: string,
  choices: readonly (readonly [string, string])[],
  set: (value: string) => void,
  name?: string,
): HTMLSelectElement {
  const options = choices.map(([one, text]) => make('option', { text, attributes: { value: one } }));
  const select = make('select', name === undefined ? {} : { attributes: { 'aria-label': name } }, ...options);
  select.value = value;
  select.addEventListener('change', () => {
    set(select.value);
  });
  return select;
}

function checkField(label: string, isChecked: boolean, set: (isChecked: boolean) => void): HTMLElement {
  const input = make('input', { attributes: { type: 'checkbox' } });
  input.checked = isChecked;
  input.addEventListener('change', () => {
    set(input.checked);
  });
  return make('label', { class: 'field tick' }, input, make('span', { text: label }));
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

/** The choice of a column's use, and what belongs to it. */
function useControls(
  name: string,
  field: number,
  mapping: Mapping & { uses: Map<number, ColumnUse> },
  known: KnownTrial,
  change: () => void,
): HTMLElement {
  const box = make('div', { class: 'use' });
  const draw = (): void => {
    const use = mapping.uses.get(field);
    const set = (next: ColumnUse | null): void => {
      if (next === null) mapping.uses.delete(field);
      else mapping.uses.set(field, next);
      change();
    };
    const select = choice(
      useValue(use),
      useChoices(known),
      (value) => {
        set(useOfValue(value, known, use));
        draw();
        box.querySelector('select')!.focus();
      },
      say('Column {name} is taken for', { name }),
    );
    box.replaceChildren(select, ...(use === undefined ? [] : detailControls(name, use, known, set)));
  };
  draw();
  return box;
}

const useValue = (use: ColumnUse | undefined): string =>
  use === undefined ? 'nothing' : use.as === undefined ? use.is : `place ${use.as}`;

function useOfValue(value: string, known: KnownTrial, before: ColumnUse | undefined): ColumnUse | null {
  if (value === 'nothing') return null;
  const as = placeForms.find((form) => value === `place ${form}`);
  if (as !== undefined) return { is: 'place', as };
  const unit = before?.unit ?? known.variables.find(({ id }) => id === value)?.unit ?? '';
  const isValue = value === 'pot_total' || known.variables.some(({ id }) => id === value);
  return isValue && unit !== '' ? { is: value, unit } : { is: value };
}

function useChoices(known: KnownTrial): (readonly [string, string])[] {
  const names = new Map([...known.variables, ...known.factors].map(({ id, name }) => [id, name]));
  return usesOf(known)
    .filter((use) => use !== 'place' && use !== 'nothing')
    .map((use) => [use, names.get(use) ?? say(useNames[use] ?? use)] as const)
    .concat(placeForms.map((form) => [`place ${form}`, say(formNames[form])] as const))
    .concat([['nothing', say('nothing: it is not used')]]);
}

const useNames: Readonly<Record<string, string>> = {
  container: 'container',
  row: 'row',
  column: 'column',
  plant: 'plant',
  cut: 'cut',
  date: 'date',
  status: 'status',
  remark: 'remark',
  pot_total: 'total of the pot',
  block: 'block',
  plot: 'plot',
  plants: 'plants set in the pot',
};

const formNames: Readonly<Record<(typeof placeForms)[number], string>> = {
  'row-column': 'place: row and column, as 2-3',
  'container-row-column': 'place with container, as T1 2-3',
  'letter row, number column': 'place: letter of the row, number of the column',
  'letter column, number row': 'place: letter of the column, number of the row',
  'numbered along rows': 'place: numbered along the rows',
  'numbered along columns': 'place: numbered along the columns',
};

const mayBeCarried = ['container', 'row', 'column', 'cut', 'date', 'block', 'plot'];

function detailControls(
  name: string,
  use: ColumnUse,
  known: KnownTrial,
  set: (use: ColumnUse) => void,
): HTMLElement[] {
  let now = use;
  const put = (next: ColumnUse): void => {
    now = next;
    set(now);
  };
  const variable = known.variables.find(({ id }) => id === use.is);
  const isWeighed = use.is === 'pot_total' || isWeight(variable?.unit);
  const unit = choice(
    use.unit ?? 'g',
    units.map((one) => [one, one] as const),
    (value) => {
      put({ ...now, unit: value });
    },
    say('Unit of column {name}', { name }),
  );
  const isCarriable = mayBeCarried.includes(use.is) || known.factors.some(({ id }) => id === use.is);
  return [
    ...(isWeighed ? [unit] : []),
    ...(variable === undefined
      ? []
      : (['plant', 'cut'] as const).map((key) =>
          fixedKey(key, name, use, (value) => {
            const rest = without(now.at ?? {}, key);
            const at = value === '' ? rest : { ...rest, [key]: value };
            put(Object.keys(at).length === 0 ? without(now, 'at') : { ...now, at });
          }),
        )),
    ...(isCarriable
      ? [
          checkField(
            say('an empty cell says what the one above it says'),
            use.isCarried === true,
            (isCarried) => {
              put(isCarried ? { ...now, isCarried } : without(now, 'isCarried'));
            },
          ),
        ]
      : []),
  ];
}

/** The plant or cut that all values of a column are of. */
function fixedKey(
  key: 'plant' | 'cut',
  name: string,
  use: ColumnUse,
  set: (value: string) => void,
): HTMLElement {
  const input = make('input', {
    class: 'short',
    attributes: {
      type: 'text',
      inputmode: 'numeric',
      autocomplete: 'off',
      'aria-label': say('{key} of column {name}', { key: say(key), name }),
    },
  });
  input.value = use.at?.[key] ?? '';
  input.addEventListener('change', () => {
    const isNumber = /^(?:[1-9]\d{0,2})?$/.test(input.value.trim());
    input.setAttribute('aria-invalid', String(!isNumber));
    if (isNumber) set(input.value.trim());
  });
  return make('label', { class: 'fixed' }, make('span', { text: say(key) }), input);
}
