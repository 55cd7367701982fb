/** A place in a text file: physical line and character column, both from 1. */
export interface Place {
  line: number;
  column: number;
}

/** Line breaks of any kind (CRLF, CR, LF) become LF: the count of lines stays, and so do the columns. */
export function withLineFeeds(text: string): string {
  return text.includes('\r') ? text.replaceAll(/\r\n?/g, '\n') : text;
}

/** The number of line feeds in text from start up to, and without, end. */
export function countLineFeeds(text: string, start: number, end: number): number {
  let count = 0;
  let at = text.indexOf('\n', start);
  while (at !== -1 && at < end) {
    count += 1;
    at = text.indexOf('\n', at + 1);
  }
  return count;
}

/** The column of an offset: characters (not UTF-16 units) since the line began, from 1. */
export function columnAt(text: string, offset: number): number {
  const lineStart = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
  return [...text.slice(lineStart, offset)].length + 1;
}

/** The place of an offset in a text whose line breaks are line feeds. */
export function placeAt(text: string, offset: number): Place {
  return { line: countLineFeeds(text, 0, offset) + 1, column: columnAt(text, offset) };
}
