import words from './heading-words.json' with { type: 'json' };
import type { KnownTrial } from './known.ts';
import { plainWords } from './plain-words.ts';

/**
 * The container that a text names: by its id, by a text that holds the id as a word, or by a number that only one id
 * ends with ("Tank 1" is T1). Where no container is known yet, the text itself, with words such as "Tank" taken for
 * what they are. Null where it names none.
 */
export function containerNamed(text: string, { containers }: Pick<KnownTrial, 'containers'>): string | null {
  const plain = plainWords(text);
  if (plain === '') return null;
  if (containers.length === 0) return idOf(text);
  const exact = containers.find(({ id }) => id === text || plainWords(id) === plain);
  if (exact !== undefined) return exact.id;
  const within = containers.filter(({ id }) => ` ${plain} `.includes(` ${plainWords(id)} `));
  if (within.length > 0) return within.length === 1 ? within[0]!.id : null;
  const number = /^(?:(\p{L}+) )?0*(\d+)$/u.exec(plain);
  if (number === null || (number[1] !== undefined && !words.container.includes(number[1]))) return null;
  const ending = containers.filter(({ id }) => /0*(\d+)$/.exec(id)?.[1] === number[2]);
  return ending.length === 1 ? ending[0]!.id : null;
}

/** An id for a container that has only a name so far: the name itself, without what an id may not hold. */
function idOf(text: string): string {
  const latin = text.normalize('NFKD').replaceAll(/\p{M}/gu, '');
  return latin
    .replaceAll(/[^A-Za-z0-9 ._-]+/g, ' ')
    .trim()
    .slice(0, 32)
    .replaceAll(/^[ ._-]+|[ ._-]+$/g, '');
}

/** True where a text is the name of a container and nothing more, and longer than the number or letter of a row. */
export function isNameOnly(text: string, known: Pick<KnownTrial, 'containers'>): boolean {
  const plain = plainWords(text);
  if (/^(?:\p{L}|\p{N}+)$/u.test(plain)) return false;
  if (known.containers.length === 0) return isContainerTitle(text, known);
  const own = known.containers.some(({ id }) => plainWords(id) === plain);
  const [first = '', ...more] = plain.split(' ');
  const isWordAndName = words.container.includes(first) && more.length === 1;
  return own || (isWordAndName && containerNamed(text, known) !== null);
}

/** True where a text has a word such as "tank" in it, or looks like a container's code. */
export const saysContainer = (text: string): boolean =>
  plainWords(text)
    .split(' ')
    .some((word) => words.container.includes(word)) || /^[A-Za-z]{1,3}[ -]?\d{1,3}$/.test(text.trim());

/** True for a text that is there to name a container and nothing else, as a title above its rows does. */
export function isContainerTitle(text: string, known: Pick<KnownTrial, 'containers'>): boolean {
  const [first = '', ...more] = plainWords(text).split(' ');
  if (known.containers.length > 0) {
    const id = containerNamed(text, known);
    if (id === null || more.length > 3) return false;
    // "Lettuces, page 1" is no title of a container that is called 1.
    return more.length === 0 || plainWords(id).length > 1 || saysContainer(text) || isNameOnly(text, known);
  }
  const isCode = /^[A-Za-z]{1,3}[ -]?\d{1,3}$/.test(text.trim());
  return isCode || (words.container.includes(first) && more.length > 0 && more.length <= 2);
}
