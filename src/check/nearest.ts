import { distance } from 'fastest-levenshtein';
import { say } from '../model/say.ts';

/** Beyond this many names or characters the comparison is not worth its time. */
const mostNames = 5000;
const longestName = 100;

/**
 * The known name most like a given one, or null where none is alike: case, spaces, hyphens and underscores
 * count for nothing, and at most a third of the letters may differ (one in the shortest names, two from five letters on).
 */
export function nearest(name: string, known: readonly string[]): string | null {
  // A file may name the same unknown thing in every row.
  let answers = kept.get(known);
  if (answers === undefined) kept.set(known, (answers = new Map()));
  const before = answers.get(name);
  if (before !== undefined) return before;
  const found = search(name, known);
  answers.set(name, found);
  return found;
}

const kept = new WeakMap<readonly string[], Map<string, string | null>>();
/** The known names in plain form: another unknown one in every row is compared with each of them. */
const plainForms = new WeakMap<readonly string[], readonly string[]>();

function search(name: string, known: readonly string[]): string | null {
  const wanted = plain(name);
  if (wanted === '' || wanted.length > longestName) return null;
  let best: string | null = null;
  let least = Math.max(wanted.length < 5 ? 1 : 2, Math.floor(wanted.length / 3)) + 1;
  if (wanted.length < 3) least = wanted.length === 2 ? 2 : 1;
  let forms = plainForms.get(known);
  if (forms === undefined) plainForms.set(known, (forms = known.slice(0, mostNames).map(plain)));
  for (const [index, form] of forms.entries()) {
    // So many letters more or fewer are as many slips.
    if (known[index]!.length > longestName || Math.abs(form.length - wanted.length) >= least) continue;
    const difference = slipsBetween(wanted, form);
    if (difference < least) {
      least = difference;
      best = known[index]!;
    }
  }
  return best;
}

/** The letters that differ; two neighbouring ones exchanged count as one. */
function slipsBetween(a: string, b: string): number {
  return isExchanged(a, b) ? 1 : distance(a, b);
}

function isExchanged(a: string, b: string): boolean {
  if (a.length !== b.length || a === b) return false;
  let at = 0;
  while (a.charAt(at) === b.charAt(at)) at += 1;
  return a.slice(0, at) + a.charAt(at + 1) + a.charAt(at) + a.slice(at + 2) === b;
}

function plain(name: string): string {
  return name
    .normalize('NFKC')
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '');
}

/** `; did you mean "x"?`, or nothing. */
export function didYouMean(name: string, known: readonly string[]): string {
  const best = nearest(name, known);
  return best === null ? '' : say('; did you mean "{name}"?', { name: best });
}

/**
 * What tells a name from the known one where both look alike: letters of another alphabet (a Cyrillic T); nothing where
 * there are none.
 */
export function otherLetters(name: string, known: string): string {
  const foreign = [...new Set(name)].find(
    (letter) => /\p{L}/u.test(letter) && letter > '\u024f' && !known.includes(letter),
  );
  if (foreign === undefined || /[^\u0000-\u024f]/.test(known)) return '';
  const code = foreign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
  return ` ${say('(the letter "{letter}" found is U+{code}, of another alphabet)', { letter: foreign, code })}`;
}
