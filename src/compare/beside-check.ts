import type { Seasons } from '../model/generated/seasons.ts';

const alpha = 0.05;

/** How a cultivar stands beside the check over the trials; the estimate is the cultivar less the check. */
export type BesideCheck =
  | { kind: 'the check' | 'no check' | 'not linked' | 'not compared' }
  | {
      kind: 'more' | 'less' | 'not told apart';
      estimate: number;
      lower: number;
      upper: number;
      /** The adjusted mean in percent of the check's. */
      percent: number | null;
    };

/** Reads off a comparison how a cultivar stands beside the check that most trials name. */
export function besideCheck(entry: Seasons, cultivar: string): BesideCheck {
  const { check } = entry;
  if (cultivar === check) return { kind: 'the check' };
  if (check === null) return { kind: 'no check' };
  const set = entry.linked_sets.find((each) => each.includes(cultivar));
  if (set?.includes(check) !== true) return { kind: 'not linked' };
  const pair = entry.differences.find(
    ({ a, b }) => (a === cultivar && b === check) || (a === check && b === cultivar),
  );
  if (!pair || pair.lower === null || pair.upper === null || pair.p_adjusted === null) {
    return { kind: 'not compared' };
  }
  const turned = pair.a === check;
  const estimate = turned ? -pair.estimate : pair.estimate;
  return {
    kind: pair.p_adjusted >= alpha ? 'not told apart' : estimate > 0 ? 'more' : 'less',
    estimate,
    lower: turned ? -pair.upper : pair.lower,
    upper: turned ? -pair.lower : pair.upper,
    percent: entry.adjusted_means.find((mean) => mean.cultivar === cultivar)?.percent_of_check ?? null,
  };
}
