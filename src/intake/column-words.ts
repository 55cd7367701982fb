import { keys, placeForms, type ColumnUse, type Key, type PlaceForm } from './mapping.ts';

/** A column's use in words, as trial.yaml keeps it and an option gives it: `fresh_weight in oz, plant 2`. */
export function wordsOfUse({ is, as, unit, at = {}, isCarried }: ColumnUse): string {
  const first = is + (unit === undefined ? '' : ` in ${unit}`) + (as === undefined ? '' : ` as ${as}`);
  const more = keys.flatMap((key) => (at[key] === undefined ? [] : [`${key} ${at[key]}`]));
  return [first, ...more, ...(isCarried === true ? [carried] : [])].join(', ');
}

const carried = 'carried down';

/** The use that such words say; null where they cannot be understood. */
export function useOfWords(words: string): ColumnUse | null {
  const [, is, as, unit, more = ''] =
    /^\s*([A-Za-z]\w*)(?:\s+as\s+((?:letter \w+, )?[a-z -]+?)|\s+in\s+([^\s,]+))?\s*((?:,.*)?)$/.exec(
      words,
    ) ?? [];
  if (is === undefined || (as !== undefined && !isPlaceForm(as))) return null;
  const use: ColumnUse = { is, ...(isPlaceForm(as) ? { as } : {}), ...(unit === undefined ? {} : { unit }) };
  const at: Partial<Record<Key, string>> = {};
  for (const part of more.split(',').map((text) => text.trim())) {
    if (part === '') continue;
    if (part === carried) use.isCarried = true;
    else {
      const [, key = '', value = ''] = /^(\w+)\s+(.+)$/.exec(part) ?? [];
      if (!isKey(key)) return null;
      at[key] = value;
    }
  }
  return Object.keys(at).length === 0 ? use : { ...use, at };
}

const isKey = (text: string): text is Key => (keys as readonly string[]).includes(text);

const isPlaceForm = (text: string | undefined): text is PlaceForm =>
  text !== undefined && (placeForms as readonly string[]).includes(text);
