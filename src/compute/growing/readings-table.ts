import { say } from '../../model/say.ts';
import type { Reading, Trial } from '../../model/trial.ts';
import { formatDate } from '../format/format-date.ts';
import { formatBare } from '../format/format-quantity.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { unitName } from '../format/unit-name.ts';
import { noNumber, type PageTable, type Text } from '../tables/page-table.ts';
import { digitsAsWritten } from './quantities.ts';

type Quantity = 'level' | 'added' | 'ec' | 'ph' | 'temperature' | 'rain' | 'overflow';

const quantities: readonly [Quantity, string, string][] = [
  ['level', 'Level', 'cm'],
  ['added', 'Added', 'L'],
  ['ec', 'EC', 'mS/cm'],
  ['ph', 'pH', '1'],
  ['temperature', 'Temperature', 'Cel'],
  ['rain', 'Rain', 'L'],
  ['overflow', 'Overflow', 'L'],
];

/** Every reading, as it was read; columns that were never read are left out. Null where there are none. */
export function readingsTable(trial: Trial): PageTable | null {
  const { readings } = trial;
  if (readings.length === 0) return null;
  const shown = quantities
    .filter(([key]) => readings.some((reading) => reading[key] !== null))
    .map(([key, heading, unit]) => ({ key, heading, unit, digits: mostDigits(readings, key) }));
  const remarks = readings.some(({ remark }) => remark !== '');
  return {
    caption: say('Readings. The level was read before that row’s water was added; EC at 25 °C.'),
    columns: [
      { heading: say('Day'), numeric: false },
      { heading: say('Container'), numeric: false },
      ...shown.map(({ heading, unit }) => ({
        heading: say(heading),
        numeric: true,
        ...(unitName(unit) === '' ? {} : { unit: unitInBoth(unit) }),
      })),
      ...(remarks ? [{ heading: say('Remark'), numeric: false }] : []),
    ],
    rows: readings.map((reading) => ({
      heading: formatDate(reading.date),
      cells: [
        reading.container,
        ...shown.map(({ key, unit, digits }): Text => {
          const value = reading[key];
          return value === null ? noNumber : formatBare(value, unit, digits);
        }),
        ...(remarks ? [reading.remark] : []),
      ],
    })),
    notes: [],
  };
}

function mostDigits(readings: readonly Reading[], key: Quantity): number {
  const values = readings.map((reading) => reading[key]).filter((value) => value !== null);
  return Math.max(...values.map(digitsAsWritten));
}
