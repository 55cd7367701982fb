import { formatDate } from '../compute/format/format-date.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import type { FigureTable } from '../model/figure.ts';
import type { Reading, Trial } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { readingKinds } from './readings-panels.ts';

interface Entry {
  date: string;
  where: string;
  what: string;
  numbers: readonly string[];
}

/** As many digits as were written down. */
function asRead(value: number | null): string {
  if (value === null) return '';
  const decimals = /\.(\d+)$/.exec(String(value))?.[1] ?? '';
  return formatNumber(value, decimals.length);
}

/** The table twin of the time line: milestones, events and readings by day. */
export function timeTable(
  trial: Trial,
  milestones: readonly { date: string; what: string }[],
  events: readonly { date: string; where?: string; what: string }[],
): FigureTable {
  const kinds = readingKinds.filter(([kind]) => trial.readings.some((reading) => reading[kind] !== null));
  const none = kinds.map(() => '');
  const ofReading = (reading: Reading): Entry => ({
    date: reading.date,
    where: reading.container,
    what: reading.remark,
    numbers: kinds.map(([kind]) => asRead(reading[kind])),
  });
  const entries: Entry[] = [
    ...milestones.map(({ date, what }) => ({ date, where: '', what, numbers: none })),
    ...events.map(({ date, where, what }, index) => ({
      date,
      where: where ?? '',
      what: `${String(index + 1)}. ${what}`,
      numbers: none,
    })),
    ...trial.readings.map(ofReading),
  ].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return {
    caption: say('Time line: what happened when'),
    columns: [
      { heading: say('Day'), numeric: false },
      { heading: say('Where'), numeric: false },
      { heading: say('What'), numeric: false },
      ...kinds.map(([, words]) => ({
        heading: say(words).replace(/^\p{Ll}(?!H)/u, (letter) => letter.toUpperCase()),
        numeric: true,
      })),
    ],
    rows: entries.map(({ date, where, what, numbers }) => [formatDate(date), where, what, ...numbers]),
  };
}
