import words from './heading-words.json' with { type: 'json' };
import { weighedVariable, type KnownTrial } from './known.ts';
import type { ColumnUse, Key } from './mapping.ts';
import { plainWords } from './plain-words.ts';
import { endingUnit } from './unit-words.ts';

const numbered: readonly { key: Key; form: RegExp }[] = [
  { key: 'plant', form: /\b(?:plant|plants|pl|planta|head|cabeza|p)\s*(?:no|nr|num|number)?\s*(\d{1,3})\b/ },
  { key: 'cut', form: /\b(?:cut|harvest|corte|cosecha)\s*(?:no|nr|num|number)?\s*(\d{1,2})\b/ },
  { key: 'cut', form: /\b(\d)\s*(?:st|nd|rd|th|er|o|do|a)?\s+(?:cut|harvest|corte|cosecha)\b/ },
  { key: 'column', form: /\b(?:column|col|columna)\s*(\d{1,3})\b/ },
  { key: 'row', form: /\b(?:row|fila)\s*(\d{1,3})\b/ },
];
const ordinals: readonly (readonly [RegExp, string])[] = [
  [/\b(?:first|primer|primera|primero)(?= (?:cut|harvest|corte|cosecha)\b)/, '1'],
  [/\b(?:second|segundo|segunda)(?= (?:cut|harvest|corte|cosecha)\b)/, '2'],
  [/\b(?:third|tercer|tercero|tercera)(?= (?:cut|harvest|corte|cosecha)\b)/, '3'],
];

/**
 * What a heading says that its column is: the trial's own names first, then the trade's words. Null where it says
 * nothing that is known.
 *
 * @param parts the cells of the heading from the top down, each joined cell once
 */
export function useOfHeading(parts: readonly string[], known: KnownTrial): ColumnUse | null {
  const whole = parts.join(' ');
  if (plainWords(whole) === '') return null;
  const named = useOfName(whole, known);
  if (named !== null) return named;
  const { at, rest: left } = takenOut(parts, known);
  const { rest, unit } = endingUnit(left.trim());
  const use = useOfName(rest, known) ?? (plainWords(rest) === '' ? bareValue(unit, at, known) : null);
  if (use === null) return null;
  const isValue = known.variables.some(({ id }) => id === use.is) || use.is === 'pot_total';
  // A heading such as "Tank 2" above a column without weights says nothing of a value.
  if (!isValue) return Object.keys(at).length === 0 ? use : null;
  return { ...use, ...(unit === null ? {} : { unit }), ...(Object.keys(at).length === 0 ? {} : { at }) };
}

/** Numbers under "Plant 1" or "(g)" alone are values of the first variable weighed. */
function bareValue(
  unit: string | null,
  at: NonNullable<ColumnUse['at']>,
  known: KnownTrial,
): ColumnUse | null {
  const variable = weighedVariable(known);
  return variable === null || (unit === null && Object.keys(at).length === 0) ? null : { is: variable };
}

/** What a heading fixes for every value beneath it, and the words that are left. */
function takenOut(
  parts: readonly string[],
  known: KnownTrial,
): { at: NonNullable<ColumnUse['at']>; rest: string } {
  const at: NonNullable<ColumnUse['at']> = {};
  const left: string[] = [];
  for (const part of parts) {
    const day = known.cuts.indexOf(part);
    // A number alone is that of a plant or a column, even where a container is called so too.
    const container = known.containers.find(
      ({ id }) => /\p{L}/u.test(part) && plainWords(part) === plainWords(id),
    );
    if (day >= 0) at.cut = String(day + 1);
    else if (/^\d{4}-\d\d-\d\d$/.test(part)) at.date = part;
    else if (container !== undefined) at.container = container.id;
    else left.push(part);
  }
  let rest = plainWords(left.join(' '));
  for (const [form, number] of ordinals) rest = rest.replace(form, number);
  for (const { key, form } of numbered) {
    const found = form.exec(rest);
    if (found === null) continue;
    at[key] ??= String(Number(found[1]));
    rest = rest.replace(found[0], ' ').trim();
  }
  const bare = /(?:^|\s)(\d{1,3})$/.exec(rest);
  if (bare !== null && at.plant === undefined) {
    at.plant = String(Number(bare[1]));
    rest = rest.slice(0, bare.index);
  }
  return { at, rest };
}

/** True where the number in a heading is said to be that of a plant, and not a number alone. */
export const saysPlant = (parts: readonly string[]): boolean =>
  numbered[0]!.form.test(plainWords(parts.join(' ')));

function useOfName(heading: string, known: KnownTrial): ColumnUse | null {
  const plain = plainWords(heading);
  if (plain === '') return null;
  for (const { id, name } of [...known.variables, ...known.factors]) {
    if (plain === plainWords(id) || plain === plainWords(name)) return { is: id };
  }
  const bare = plain.replace(/^(?:the )|(?: (?:no|nr|id|name|number|code))$/g, '');
  const found = Object.entries(words).find(([, list]) => list.includes(plain) || list.includes(bare))?.[0];
  if (found === undefined) return null;
  if (found === 'weight') return ofId(weighedVariable(known));
  if (found === 'cultivar') return ofId(cultivarFactor(known));
  return { is: found };
}

const ofId = (id: string | null): ColumnUse | null => (id === null ? null : { is: id });

/** The factor that a column of cultivars or treatments is: the one of that kind, or the only one. */
function cultivarFactor({ factors }: KnownTrial): string | null {
  const one =
    factors.find(({ kind }) => kind === 'cultivar') ?? (factors.length === 1 ? factors[0] : undefined);
  return one?.id ?? null;
}
