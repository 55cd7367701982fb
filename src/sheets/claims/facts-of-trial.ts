import { levelNames, treatmentName } from '../../compute/format/level-names.ts';
import type { Findings, TreatmentDescription } from '../../model/findings.ts';
import type { Cultivar } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import type { Treatment, Trial } from '../../model/trial.ts';
import type { Fact } from './fact.ts';
import { type Cut, number } from './fact-words.ts';
import { factsOfDescription } from './facts-of-description.ts';
import { factsOfDifferences } from './facts-of-differences.ts';
import { factsOfInference } from './facts-of-inference.ts';
import { placeFacts } from './facts-of-place.ts';
import { totalFacts } from './facts-of-totals.ts';

/** Every number of a trial's findings that a sentence may give: weights, yields and percentages. */
export function factsOfTrial(trial: Trial, findings: Findings, cultivars: readonly Cultivar[]): Fact[] {
  const names = levelNames(trial, cultivars);
  const name = (treatment: Treatment): string => treatmentName(trial, treatment, names);
  const cuts: { cut: Cut; treatments: readonly TreatmentDescription[] }[] = [
    { cut: 'all', treatments: findings.treatments },
    ...findings.treatments_by_cut,
  ];
  const described = cuts.flatMap(({ cut, treatments }) =>
    treatments.flatMap((each) => ofCut(factsOfDescription(each, cut, name), cut)),
  );
  const inferred = findings.inference.flatMap((each) => ofCut(factsOfInference(each, name), each.cut));
  const plain = cuts.flatMap(({ cut, treatments }) => ofCut(factsOfDifferences(treatments, cut, name), cut));
  const all = [
    ...described,
    ...inferred,
    ...plain,
    ...totalFacts(trial, findings, name),
    ...placeFacts(findings),
    ...planningFacts(findings),
  ];
  // Of a trial that counted or scored, its numbers are no weights.
  const weighed = findings.variable.unit === 'g';
  return all.filter(({ dimension }) => weighed || dimension === '%');
}

function ofCut(facts: readonly Fact[], cut: Cut): readonly Fact[] {
  return cut === 'all' ? facts : facts.map((fact) => ({ ...fact, cut }));
}

function planningFacts({ next_trial: cases, inference }: Findings): Fact[] {
  const about = {
    dimension: '%' as const,
    kind: 'planning' as const,
    treatments: [],
    measure: null,
    component: null,
  };
  return [
    ...cases.flatMap(({ difference_percent: difference, power, cv_used: cv }): Fact[] => [
      {
        ...about,
        value: difference,
        words: () => say('a difference that a next trial is reckoned for'),
      },
      { ...about, value: 100 * power, words: () => say('the power that a next trial is reckoned for') },
      ...number(cv, {
        ...about,
        words: () => say('the coefficient of variation that a next trial is reckoned from'),
      }),
    ]),
    ...inference.map(({ alpha }): Fact => ({
      ...about,
      value: 100 * (1 - alpha),
      words: () => say('the level of the intervals'),
    })),
  ];
}
