import { levelNames } from '../compute/format/level-names.ts';
import { plannedSentences } from '../compute/planning/planned-sentences.ts';
import type { Cultivar } from '../model/library.ts';
import type { Candidate } from './candidates.ts';
import type { Proposal } from './proposals.ts';

/** A proposal as text: what it is, what it will be able to tell, and what it cannot answer, a sentence each. */
export function proposalSentences(
  { candidate, trial, analysis, plants, seed }: Proposal,
  cultivars: readonly Cultivar[],
): { heading: string; sentences: string[] } {
  const told = analysis === null ? [] : plannedSentences(trial, levelNames(trial, cultivars), analysis);
  return {
    heading: `${nameOf(candidate)} (${plants} plants, seed ${seed})`,
    sentences: [...told, ...limits(candidate, trial.metadata.containers.length)],
  };
}

function nameOf({ arrangement, units, blocks }: Candidate): string {
  const [first] = arrangement;
  const name = `${first!.toUpperCase()}${arrangement.slice(1).replace('latin', 'Latin')}`;
  const allotted = [...new Set(units)].map((unit) => `${unit}s`).join(', then for ');
  const block = { none: '', containers: ', each container a block', given: ', in the blocks given' }[blocks];
  return `${name}${block}, lots drawn for ${allotted}`;
}

/** What a grower might take the trial to answer, and it does not. */
function limits({ arrangement, units, blocks }: Candidate, containers: number): string[] {
  const within = units.some((unit) => unit !== 'container');
  const whole = units.includes('container');
  return [
    ...(arrangement === 'unreplicated'
      ? [
          'It is marked unreplicated: it can describe, and prompt a better trial; no difference in it can be put down to the treatments.',
        ]
      : []),
    ...(within
      ? [
          'Plants of a container share its solution: this compares treatments grown side by side in it, and says nothing of how one would do with a container to itself.',
        ]
      : []),
    ...(whole && arrangement !== 'unreplicated'
      ? ['A container counts as one unit, however many plants of it are weighed.']
      : []),
    ...(within && !whole && blocks === 'none' && containers > 1
      ? [
          'Without blocks a treatment may come to stand more often in one container than in another: the analysis allows for it, at a cost in precision.',
        ]
      : []),
    ...(arrangement === 'latin square'
      ? [
          'Rows and columns are taken out, and cost degrees of freedom: worth it where light or warmth changes both ways.',
        ]
      : []),
  ];
}

/** What holds for all proposals together; null where there is nothing to add. */
export function betweenProposals(proposals: readonly Proposal[], stated: boolean): string | null {
  const units = new Set(proposals.flatMap(({ candidate }) => candidate.units));
  if (stated || units.size < 2) return null;
  return 'All are reckoned with one variation between units, though a single plant varies more than the mean of a plot or a container: give yours with --variation.';
}
