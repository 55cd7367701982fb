import type { Place } from './place.ts';

/** A fact sheet's text by its lines, to say where an offset of it stands. */
export interface SheetSource {
  /** With line feeds only, the front matter blanked out, so that lines and offsets stay. */
  text: string;
  place(offset: number): Place;
  /** The column at which a piece of text begins on a line, looked for from a column on. */
  columnOf(line: number, piece: string): number;
}

/** Places are reckoned from line starts once, since a sheet has many nodes. */
export function sheetSource(text: string): SheetSource {
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  const lineText = (line: number): string =>
    text.slice(starts[line - 1], (starts[line] ?? text.length + 1) - 1);
  return {
    text,
    place: (offset) => {
      let [low, high] = [0, starts.length - 1];
      while (low < high) {
        const middle = Math.ceil((low + high) / 2);
        if (starts[middle]! <= offset) low = middle;
        else high = middle - 1;
      }
      return { line: low + 1, column: [...text.slice(starts[low], offset)].length + 1 };
    },
    columnOf: (line, piece) => {
      const whole = lineText(line);
      // A character reference stands otherwise in the source; then the line's first letter is meant.
      const at = piece === '' ? -1 : whole.indexOf(piece);
      const first = /^[\s>]*/.exec(whole)?.[0].length ?? 0;
      return [...whole.slice(0, at === -1 ? first : at)].length + 1;
    },
  };
}
