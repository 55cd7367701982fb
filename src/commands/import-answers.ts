/** What is typed at `import` beside a preview: that it is right, or what in it is not. */
import type { Corrections } from '../intake/corrections.ts';
import { say } from '../model/say.ts';
import { isYes } from './talk.ts';

export type Answer = 'write' | 'stop' | Corrections;

export const question = (): string =>
  say(
    'Write this? {yes}, {no}, or what is to be read otherwise, such as D=fresh_weight in oz (help shows more): ',
    { yes: say('yes'), no: say('no') },
  );

/** What can be typed, word for word as the options have it, and what it says. */
export function help(): string {
  const lines = [
    ['D=fresh_weight in oz', say('what column D is; E=nothing leaves it out')],
    ['x=dead', say('what a sign in place of a weight means: a status, blank, or a number')],
    ['headings 3', say('the row, or rows such as 3-4, of the headings')],
    ['rows 4-51', say('the first and last row of data')],
    ['leave out 12', say('a row that is no plant')],
    ['always container=T1', say('what is so of every row')],
    ['decimal ,', say('the decimal mark of numbers that are text')],
    ['dates day first', say('or month first')],
    ['turned', say('each plant has a column, not a row')],
  ] as const;
  return lines.map(([typed, meaning]) => `  ${typed.padEnd(24)}${meaning}\n`).join('');
}

/** What a line that was typed says; null where it cannot be understood. */
export function answerOf(line: string): Answer | null {
  const text = line.trim();
  if (isYes(text) || /^write$/i.test(text)) return 'write';
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
