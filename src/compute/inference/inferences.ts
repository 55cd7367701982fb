import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { type Cut, analysedCuts } from '../cuts.ts';
import { type Yields } from '../yields.ts';
import { infer, notTested } from './infer.ts';
import { type Measure, type Observation, observationsOf } from './observations.ts';
import { scoresAreNotSummed, tooFewTreatments, wholePots } from './verdict-words.ts';

const measures: readonly Measure[] = ['per_pot', 'per_plant_set', 'per_plant_harvested'];

/** One entry for each measure and cut; none for a trial without factors. */
export function inferences(trial: Trial, yieldsOfCut: (cut: Cut) => Yields): Inference[] {
  if ((trial.metadata.factors ?? []).length === 0) return [];
  // Where pots hold one plant and none was lost, the measures are the same weights: analysed once.
  const done: { observations: readonly Observation[]; entry: Inference }[] = [];
  return analysedCuts(trial).flatMap((cut) =>
    measures.map((measure) => {
      const observations = observationsOf(yieldsOfCut(cut), measure);
      const same = done.find((each) => alike(each.observations, observations));
      if (same && same.entry.cut === cut) return renamed(same.entry, measure);
      const entry = entryOf(trial, measure, cut, observations);
      done.push({ observations, entry });
      return entry;
    }),
  );
}

function entryOf(trial: Trial, measure: Measure, cut: Cut, observations: readonly Observation[]): Inference {
  const untested = (reason: string) => notTested(trial, measure, cut, observations, reason);
  if (observations.length === 0 && measure !== 'per_pot') return untested(wholePots());
  const scored = trial.metadata.variables[0]!.kind === 'scored';
  if (scored && measure === 'per_pot' && trial.positions.some(({ plants }) => plants > 1)) {
    return untested(scoresAreNotSummed());
  }
  const varied = (trial.metadata.factors ?? []).some(
    ({ id }) => new Set(observations.map(({ position }) => position.treatment[id])).size > 1,
  );
  return varied ? infer(trial, measure, cut, observations) : untested(tooFewTreatments());
}

function alike(a: readonly Observation[], b: readonly Observation[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ position, value }, index) => position === b[index]!.position && value === b[index]!.value)
  );
}

/** The same analysis under another measure's name. */
function renamed(entry: Inference, measure: Measure): Inference {
  const model = entry.model.replace(inWords(entry.measure), inWords(measure));
  return { ...entry, measure, model };
}

function inWords(measure: Measure): string {
  return say(measure.replaceAll('_', ' '));
}
