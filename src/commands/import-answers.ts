/** What is typed at `import` beside a preview: that it is right, or what in it is not. */
import type { Corrections } from '../intake/corrections.ts';

export type Answer = 'write' | 'stop' | Corrections;

export const question =
  'Write this? yes, no, or what is to be read otherwise, such as D=fresh_weight in oz (help shows more): ';

export const help = `  D=fresh_weight in oz    what column D is; E=nothing leaves it out
  x=dead                  what a sign in place of a weight means: a status, blank, or a number
  headings 3              the row, or rows such as 3-4, of the headings
  rows 4-51               the first and last row of data
  leave out 12            a row that is no plant
  always container=T1     what is so of every row
  decimal ,               the decimal mark of numbers that are text
  dates day first         or month first
  turned                  each plant has a column, not a row
`;

/** What a line that was typed says; null where it cannot be understood. */
export function answerOf(line: string): Answer | null {
  const text = line.trim();
  if (/^(?:y|yes|write)$/i.test(text)) return 'write';
  if (/^(?:|n|no|q|quit|stop)$/i.test(text)) return 'stop';
  if (/^turned$/i.test(text)) return { turned: true };
  const [, name = '', rest = ''] =
    /^(headings|rows|leave out|always|decimal|dates)\s+(.+)$/i.exec(text) ?? [];
  switch (name.toLowerCase()) {
    case 'headings':
      return { headings: rest };
    case 'rows':
      return { rows: rest };
    case 'leave out':
      return { leaveOut: [rest] };
    case 'always':
      return { always: [rest] };
    case 'decimal':
      return { decimal: rest };
    case 'dates':
      return { dates: rest };
  }
  if (!/.=./.test(text)) return null;
  // Columns are lettered in capitals, and numbered where the table is turned; all else is a word of the grower's.
  return /^(?:[A-Z]{1,3}|\d+)\s*=/.test(text) && !isMeaning(text) ? { columns: [text] } : { words: [text] };
}

/** `X=dead` says what X means, though it could be a column. */
const isMeaning = (text: string): boolean =>
  /=\s*(?:dead|not weighed|culled|no regrowth|not planted|weighed|blank|-?\d+(?:\.\d+)?)$/.test(text);

/** Corrections one after the other: lists grow, and of what there is one of, the last holds. */
export function together(before: Corrections, after: Corrections): Corrections {
  const lists = ['leaveOut', 'columns', 'always', 'words'] as const;
  const joined = Object.fromEntries(
    lists.flatMap((name) => {
      const list = [...(before[name] ?? []), ...(after[name] ?? [])];
      return list.length === 0 ? [] : [[name, list]];
    }),
  );
  return { ...before, ...after, ...joined };
}
