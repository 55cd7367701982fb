/** Rows as CSV (RFC 4180) with the given delimiter; a cell is quoted where it must be. Lines end with LF. */
export function rowsText(rows: readonly (readonly string[])[], delimiter = ','): string {
  const cell = (text: string): string =>
    text.includes(delimiter) || /["\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
  return rows.map((row) => `${row.map(cell).join(delimiter)}\n`).join('');
}
