import type { KnownTrial } from './known.ts';
import type { PlaceForm } from './mapping.ts';

/** A place that one cell names; the container null where it names none. */
export interface NamedPlace {
  container: string | null;
  row: number;
  column: number;
}

/** The place that a cell names in a given form; null where it does not. Numbered places need the container's grid. */
export function placeInWords(
  text: string,
  form: PlaceForm,
  container: string | null,
  { containers }: Pick<KnownTrial, 'containers'>,
): NamedPlace | null {
  const number = (word: string | undefined): number => Number(word ?? '');
  if (form === 'row-column') {
    const found = twoNumbers.exec(text.trim());
    return found && { container: null, row: number(found[1]), column: number(found[2]) };
  }
  if (form === 'container-row-column') {
    const found = withContainer.exec(text.trim());
    return found && { container: found[1]!.trim(), row: number(found[2]), column: number(found[3]) };
  }
  if (form.startsWith('letter')) {
    const found = letterAndNumber.exec(text.trim());
    if (found === null) return null;
    const letter = found[1]!.toUpperCase().codePointAt(0)! - 64;
    return form.startsWith('letter row')
      ? { container: null, row: letter, column: number(found[2]) }
      : { container: null, row: number(found[2]), column: letter };
  }
  const grid = containers.find(({ id }) => id === container);
  if (grid === undefined || !/^\d{1,5}$/.test(text.trim())) return null;
  const index = number(text) - 1;
  if (index < 0 || index >= grid.rows * grid.columns) return null;
  return form === 'numbered along rows'
    ? { container: null, row: 1 + Math.floor(index / grid.columns), column: 1 + (index % grid.columns) }
    : { container: null, row: 1 + (index % grid.rows), column: 1 + Math.floor(index / grid.rows) };
}

const twoNumbers = /^(?:r(?:ow)?\s*)?(\d{1,3})\s*(?:[-/,.;: x×]|,?\s*c(?:ol(?:umn)?)?)\s*(\d{1,3})$/i;
const withContainer =
  /^(.+?)[\s\-/,.;:]+(?:r(?:ow)?\s*)?(\d{1,3})\s*(?:[-/,.;: x×]|,?\s*c(?:ol(?:umn)?)?)\s*(\d{1,3})$/i;
const letterAndNumber = /^([a-z])\s*-?\s*(\d{1,3})$/i;

/** The form that all of these texts have; null where none fits them. */
export function placeFormOf(
  texts: readonly string[],
  known: Pick<KnownTrial, 'containers'>,
): PlaceForm | null {
  if (texts.length === 0) return null;
  const fits = (form: RegExp): boolean => texts.every((text) => form.test(text.trim()));
  if (fits(twoNumbers)) return 'row-column';
  if (fits(letterAndNumber)) return 'letter row, number column';
  if (fits(withContainer)) return 'container-row-column';
  return fits(/^\d{1,5}$/) && known.containers.length > 0 ? 'numbered along rows' : null;
}
