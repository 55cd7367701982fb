import { placeInText, type SheetText } from '../model/fact-sheet.ts';
import type { Place } from './place.ts';
import type { SheetReading } from './sheet-reading.ts';

/** A footnote's mark as some kinds of Markdown have it: `[^1]`, or `^[its words]`. */
const mark = /\[\^([^\]\s]+)\]|\^\[/g;

/** Keeps the marks of footnotes in a text as faults, each label once: a sheet has none, and would print the marks. */
export function footnotesIn(text: SheetText, reading: SheetReading): void {
  for (const { index, 0: found } of text.text.matchAll(mark))
    keepFootnote(found, placeInText(text, index), reading);
}

/** Keeps the mark of a footnote that the parser took for a link, `^1` of `[^1]`; false where it is none. */
export function keptAsFootnote(identifier: string, place: Place, reading: SheetReading): boolean {
  if (!identifier.startsWith('^')) return false;
  keepFootnote(`[${identifier}]`, place, reading);
  return true;
}

function keepFootnote(found: string, place: Place, { faults }: SheetReading): void {
  const known = faults.some((fault) => fault.kind === 'footnote' && fault.found === found);
  if (!known) faults.push({ kind: 'footnote', place, found, detail: '' });
}
