import { formatNumber } from '../compute/format/format-number.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { formatRange } from '../compute/format/format-range.ts';
import { amountOf } from '../compute/words/telling.ts';
import { tell } from '../compute/words/tell.ts';
import type { Words } from '../compute/words/words.ts';
import { say } from '../model/say.ts';
import type { Asked } from './component.ts';
import type { Found } from './asked-trial.ts';
import { refuseNoValue } from './refuse.ts';
import { type WordsPiece, wordsPiece } from './piece.ts';

/** A number of a trial's findings, before it is written. */
export interface Quantity {
  value: number | null;
  /** Why it is null. */
  reason?: string | undefined;
  /** A unit that formatQuantity knows, `%`, or nothing for a count. */
  unit: string;
  digits: number;
  /** Its interval of confidence where the findings have one. */
  interval?: readonly [number, number] | null;
  /** The anchor on the trial's page where its working stands. */
  anchor: string;
}

/** How one kind of number is found. Null where what is asked for is not there, which is then reported. */
export type FindQuantity = (asked: Asked, found: Found) => Quantity | null;

/** A number in words, leading to its working; one that there is not is reported with its reason. */
export function writtenQuantity(asked: Asked, { trial }: Found, quantity: Quantity): WordsPiece[] | null {
  const { value, unit, digits, interval, anchor } = quantity;
  if (value === null) {
    const reason = quantity.reason ?? say('the findings of the trial do not give it');
    const values = { number: asked.attribute('of') ?? '', reason };
    return refuseNoValue(asked, 'of', say('{number} is not known here: {reason}', values));
  }
  const shown = interval && asked.attribute('interval') !== 'no' ? interval : null;
  const behind: Words =
    shown === null
      ? []
      : tell(' (95% interval {range})', { range: formatRange(shown[0], shown[1], unit, digits) });
  return wordsPiece([amount(value, unit, digits)], `trials/${trial.id}/#${anchor}`, behind);
}

function amount(value: number, unit: string, digits: number): Words[number] {
  if (unit === '%') return formatPercent(value, digits);
  if (unit === '') return formatNumber(value, digits);
  return amountOf(value, unit, digits);
}
