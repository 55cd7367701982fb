import type { Seasons } from '../model/generated/seasons.ts';
import type { TwoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';
import type { TrialCells } from './season-cells.ts';
import { leastTrials } from './steadiness.ts';
import { say } from '../model/say.ts';

/** Whether any two cultivars can be compared with an error, and what a grower should know of it. */
export function seasonVerdict(
  fit: TwoWayAdditive,
  parts: readonly TrialCells[],
): Pick<Seasons, 'verdict' | 'reason'> {
  const refusal = refusalOf(fit, parts.length);
  if (refusal !== null) return { verdict: 'not compared', reason: refusal };
  const reasons: string[] = [];
  if (fit.sets.length > 1) {
    reasons.push(
      say(
        'There are {count} sets of cultivars that no chain of shared trials connects: none of one is compared with any of another.',
        { count: fit.sets.length },
      ),
    );
  }
  if (parts.filter(({ cells }) => cells.length > 1).length < leastTrials) {
    reasons.push(
      say(
        'With fewer than {least} trials that grew several cultivars it cannot be judged how steady a cultivar is.',
        { least: leastTrials },
      ),
    );
  }
  return { verdict: 'compared', reason: reasons.join(' ') };
}

function refusalOf(fit: TwoWayAdditive, trials: number): string | null {
  if (trials < 2) return say('There is one trial only, and across seasons the trial is the replicate.');
  if (fit.differences.length === 0) {
    return say('No two cultivars stood in trials that a chain of shared cultivars connects.');
  }
  if (fit.residualDf === 0) {
    return say(
      'The cultivars did not meet in enough trials to show how much their differences vary from one trial to the next.',
    );
  }
  if (fit.reason !== null) {
    return say(
      'The cultivars differed by exactly as much in every trial, so there is no variation that a difference could be held against.',
    );
  }
  return null;
}
