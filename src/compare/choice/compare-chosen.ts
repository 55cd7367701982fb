import type { Seasons } from '../../model/generated/seasons.ts';
import { compareGroup } from '../compare-group.ts';
import type { TrialCells } from '../season-cells.ts';
import type { SeasonGroup } from '../season-groups.ts';
import type { Choice } from './choice.ts';
import { conditions, seasonParts } from './conditions.ts';

/** The comparison that a reader chose; null where the choice leaves no trial. */
export function compareChosen(group: SeasonGroup, choice: Choice): Seasons | null {
  const { onlyReplicated, asSample, weighted, cultivars } = choice;
  return compareGroup(group, {
    onlyReplicated,
    weighted,
    trialsAsSample: asSample,
    // Those beside the others take long to compute and are not shown.
    randomTrials: asSample,
    trials: group.parts.filter(({ trial }) => fits(trial, choice)).map(({ trial }) => trial.id),
    ...(cultivars === null ? {} : { cultivars }),
  });
}

/** Whether a trial is one of those chosen. */
export function fits(trial: TrialCells['trial'], choice: Choice): boolean {
  const { time, year } = seasonParts(trial);
  if (choice.from !== null && (year === null || year < choice.from)) return false;
  if (choice.to !== null && (year === null || year > choice.to)) return false;
  if (choice.seasons?.includes(time) === false) return false;
  if (choice.settings?.includes(trial.setting) === false) return false;
  return conditions.every(({ key, of }) => choice.held[key] === undefined || choice.held[key] === of(trial));
}
