import { textWidth } from './text-width.ts';

/** Cuts a word that is wider than a line, so that nothing is drawn outside the figure. */
function pieces(word: string, width: number, size: number, bold: boolean): string[] {
  const cut: string[] = [];
  let piece = '';
  for (const letter of word) {
    if (piece !== '' && textWidth(piece + letter, size, bold) > width) {
      cut.push(piece);
      piece = '';
    }
    piece += letter;
  }
  return [...cut, piece];
}

/** Breaks a text into lines no wider than `width` px; white space runs together. At least one line. */
export function wrapText(text: string, width: number, size: number, bold = false): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \t\r\n]+/).flatMap((each) => pieces(each, width, size, bold))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size, bold) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}
