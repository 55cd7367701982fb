/**
 * Text that a spreadsheet would run as a formula is kept from running by an apostrophe before it: at the
 * start of a cell, and after anything inside it that a spreadsheet may take for the start of another cell
 * (a semicolon, a tab, a line break). Full-width signs count too: East Asian spreadsheets run them. A plain
 * number is no formula and stays as it is.
 */
const plainNumber = /^[+-]?\d+(?:\.\d+)?$/;
const opens = /^'*(?:[\t\r\n]|\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/;
const opensInside = /[;\t\r\n](?='*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/g;
const guardedInside = /([;\t\r\n])'(?='*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/g;

const runs = (text: string): boolean => opens.test(text) && !plainNumber.test(text);

/** The text with an apostrophe before whatever a spreadsheet would run. */
export function guardedText(text: string): string {
  const inside = text.replace(opensInside, `$&'`);
  return runs(inside) ? `'${inside}` : inside;
}

/** What `guardedText` was given: one apostrophe taken off wherever it put one. */
export function unguardedText(text: string): string {
  const inside = text.startsWith(`'`) && runs(text.slice(1)) ? text.slice(1) : text;
  return inside.replace(guardedInside, '$1');
}
