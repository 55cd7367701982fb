import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import type { Telling } from './telling.ts';
import type { Words } from './words.ts';

/** Scores compared by ranks: the highest and lowest median, then whether ranks tell the treatments apart. */
export function rankSentence(telling: Telling, { rank_test: ranks, alpha }: Inference): Words | null {
  if (!ranks || ranks.p === null) return null;
  const known = ranks.medians.flatMap(({ treatment, median }) =>
    median === null ? [] : [{ treatment, median }],
  );
  const medians = mediansInWords(known, telling);
  if (medians === null) return null;
  const apart =
    ranks.p < alpha
      ? say('by their ranks the treatments are not all alike')
      : say('by their ranks this trial could not tell the treatments apart');
  return [`${medians}; ${apart}.`];
}

/** The highest and the lowest median, without a full stop; null where there are none. */
export function mediansInWords(
  known: readonly { treatment: Treatment; median: number }[],
  { name, within }: Pick<Telling, 'name' | 'within'>,
): string | null {
  const descending = [...known].sort((a, b) => b.median - a.median);
  const [most, least] = [descending[0], descending.at(-1)];
  if (most === undefined || least === undefined) return null;
  const marks = (value: number) => formatNumber(value, Number.isInteger(value) ? 0 : 1);
  return most.median === least.median
    ? say('Every treatment had a median of {median}', { median: marks(most.median) })
    : say('{most} had the highest median, {highest}, and {least} the lowest, {lowest}', {
        most: name(most.treatment),
        highest: marks(most.median),
        least: within(least.treatment),
        lowest: marks(least.median),
      });
}
