import { decodeUtf8 } from '../read/utf8.ts';
import { withLineFeeds } from '../read/place.ts';
import { escapeUnseen } from './show-value.ts';

/** The line that a problem speaks of, cut where it is long, with the part in question set apart. */
export interface Excerpt {
  before: string;
  marked: string;
  after: string;
}

/** Characters shown on either side of the place. */
const around = 60;

/**
 * A function from a problem's place to the line there; null where there is none. Each file is split only once.
 *
 * @param bytesOf the bytes of a file as problems name it
 */
export function excerpts(
  bytesOf: (file: string) => Uint8Array | undefined,
): (place: {
  file: string;
  line: number | null;
  column: number | null;
  found: string | null;
}) => Excerpt | null {
  const lines = new Map<string, readonly string[]>();
  return ({ file, line, column, found }) => {
    if (line === null) return null;
    const known = lines.get(file) ?? linesOf(bytesOf(file));
    lines.set(file, known);
    const text = known[line - 1];
    return text === undefined || text === '' ? null : cutOut(text, column, found);
  };
}

function linesOf(bytes: Uint8Array | undefined): readonly string[] {
  if (bytes === undefined) return [];
  // What is no UTF-8 is shown as it would be read by mistake.
  const text = decodeUtf8(bytes).text ?? new TextDecoder('latin1').decode(bytes);
  return withLineFeeds(text).split('\n');
}

function cutOut(text: string, column: number | null, found: string | null): Excerpt {
  const characters = [...text];
  const at = Math.min((column ?? 1) - 1, characters.length);
  const rest = characters.slice(at);
  const marked = column === null ? 0 : markedLength(rest.join(''), found);
  const start = at > around ? at - around : 0;
  const end = at + Math.min(marked, around);
  const last = Math.min(end + around, characters.length);
  const shown = (from: number, to: number): string => escapeUnseen(characters.slice(from, to).join(''));
  return {
    before: `${start > 0 ? '…' : ''}${shown(start, at)}`,
    marked: shown(at, end),
    after: `${shown(end, last)}${last < characters.length ? '…' : ''}`,
  };
}

/** How many characters of the text at the place are in question: what was found, or the word that begins there. */
function markedLength(rest: string, found: string | null): number {
  if (found !== null && found !== '' && rest.startsWith(found)) return [...found].length;
  return [...(/^"[^"]*"|^[^,;\t\s]+/.exec(rest)?.[0] ?? '')].length;
}
