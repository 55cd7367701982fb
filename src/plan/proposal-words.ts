import { levelNames } from '../compute/format/level-names.ts';
import { lotUnits } from '../compute/lots/lot-place.ts';
import { plannedSentences } from '../compute/planning/planned-sentences.ts';
import type { Cultivar } from '../model/library.ts';
import { say, sayCount } from '../model/say.ts';
import type { Candidate, Refusal } from './candidates.ts';
import type { Proposal } from './proposals.ts';

/** A proposal as text: what it is, what it will be able to tell, and what it cannot answer, a sentence each. */
export function proposalSentences(
  { candidate, trial, analysis, plants, seed }: Proposal,
  cultivars: readonly Cultivar[],
): { heading: string; sentences: string[] } {
  const told = analysis === null ? [] : plannedSentences(trial, levelNames(trial, cultivars), analysis);
  return {
    heading: sayCount(plants, '{name} ({count} plant, seed {seed})', '{name} ({count} plants, seed {seed})', {
      name: nameOf(candidate),
      seed,
    }),
    sentences: [...told, ...limits(candidate, trial.metadata.containers.length)],
  };
}

function nameOf({ arrangement, units, blocks }: Candidate): string {
  const names = {
    unreplicated: say('Unreplicated'),
    'completely randomised': say('Completely randomised'),
    'randomised blocks': say('Randomised blocks'),
    'latin square': say('Latin square'),
    'split plot': say('Split plot'),
  };
  const name = names[arrangement];
  const [coarse, fine] = lotUnits.filter((unit) => units.includes(unit)).map((unit) => say(`${unit}s`));
  const allotted =
    fine === undefined
      ? say('lots drawn for {units}', { units: coarse! })
      : say('lots drawn for {units}, then for {parts}', { units: coarse!, parts: fine });
  const inBlocks = {
    none: [],
    containers: [say('each container a block')],
    given: [say('in the blocks given')],
  };
  return [name, ...inBlocks[blocks], allotted].join(', ');
}

/** What a grower might take the trial to answer, and it does not. */
function limits({ arrangement, units, blocks }: Candidate, containers: number): string[] {
  const within = units.some((unit) => unit !== 'container');
  const whole = units.includes('container');
  return [
    ...(arrangement === 'unreplicated'
      ? [
          say(
            'It is marked unreplicated: it can describe, and prompt a better trial; no difference in it can be put down to the treatments.',
          ),
        ]
      : []),
    ...(within
      ? [
          say(
            'Plants of a container share its solution: this compares treatments grown side by side in it, and says nothing of how one would do with a container to itself.',
          ),
        ]
      : []),
    ...(whole && arrangement !== 'unreplicated'
      ? [say('A container counts as one unit, however many plants of it are weighed.')]
      : []),
    ...(within && !whole && blocks === 'none' && containers > 1
      ? [
          say(
            'Without blocks a treatment may come to stand more often in one container than in another: the analysis allows for it, at a cost in precision.',
          ),
        ]
      : []),
    ...(arrangement === 'latin square'
      ? [
          say(
            'Rows and columns are taken out, and cost degrees of freedom: worth it where light or warmth changes both ways.',
          ),
        ]
      : []),
    say('It is one season in one place: how it would come out in another takes another trial.'),
  ];
}

/** What holds for all proposals together; null where there is nothing to add. */
export function betweenProposals(proposals: readonly Proposal[], stated: boolean): string | null {
  const units = new Set(proposals.flatMap(({ candidate }) => candidate.units));
  if (stated || units.size < 2) return null;
  return say(
    'All are reckoned with one variation between units, though a single plant varies more than the mean of a plot or a container: say what yours vary by where you know it.',
  );
}

/** The proposals numbered, each with its sentences below it, and what was refused. */
export function proposalLines(
  made: { proposals: readonly Proposal[]; refusals: readonly Refusal[] },
  cultivars: readonly Cultivar[],
  isStated: boolean,
): string[] {
  const between = betweenProposals(made.proposals, isStated);
  return [
    ...made.proposals.flatMap((proposal, index) => {
      const { heading, sentences } = proposalSentences(proposal, cultivars);
      return [`${String(index + 1)}. ${heading}`, ...sentences.map((sentence) => `   ${sentence}`)];
    }),
    ...(between === null ? [] : [between]),
    ...made.refusals.map(({ reason }) => say('No: {reason}.', { reason })),
  ];
}
