import type { InBothUnits } from '../compute/format/format-quantity.ts';
import { say } from '../model/say.ts';
import { narrow } from './grid-map.ts';
import { textWidth } from './text-width.ts';

/** What stands before the limits of an interval, with a space: shorter where both units leave a phone no room. */
export function intervalWords(limits: InBothUnits): string {
  const words = `${say('95% interval')} `;
  const whole = `${words}${limits.metric} · ${limits.us ?? ''}`;
  return textWidth(whole, 12) <= narrow ? words : `${say('95%:')} `;
}
