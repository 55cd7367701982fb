/** A column as a spreadsheet letters it: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const above = Math.floor(column / 26);
  return (above > 0 ? columnLetters(above - 1) : '') + String.fromCodePoint(65 + (column % 26));
}

/** The number of a lettered column from 0; null for what is none. */
export function columnOfLetters(letters: string): number | null {
  if (!/^[A-Z]{1,3}$/i.test(letters)) return null;
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + (letter.codePointAt(0)! - 64), 0) - 1;
}

/** A cell as a spreadsheet names it: row 0 and column 0 are A1. */
export const cellName = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;
