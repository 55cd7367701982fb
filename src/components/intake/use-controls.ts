/** The controls that say what a column is taken for. */
import { usesOf } from '../../intake/corrections.ts';
import type { KnownTrial } from '../../intake/known.ts';
import { placeForms, type ColumnUse, type Mapping } from '../../intake/mapping.ts';
import { say } from '../../model/say.ts';
import { isWeight } from '../../model/units.ts';
import { make } from '../weigh/dom.ts';
import { checkField, choice } from './fields.ts';
import { without } from '../../model/without.ts';

const units = ['g', 'kg', 'oz', 'lb'];

/** The choice of a column's use, and what belongs to it. */
export function useControls(
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
