import { say } from '../../../model/say.ts';
import type { Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import type { LevelNames } from '../../format/level-names.ts';
import { termName } from './names-of.ts';

/** For each factor a sentence on its experimental unit and how many of those each level has. */
export function unitSentences(trial: Trial, names: LevelNames, { units }: Inference): string[] {
  return units.map(({ factor, experimental_unit: unit, replicates }) => {
    const counts = Object.entries(replicates);
    const [first] = counts;
    const alike = first !== undefined && counts.every(([, count]) => count === first[1]);
    const each = alike
      ? say('{count} for each level', { count: first[1] })
      : counts.map(([level, count]) => `${names(factor, level)} ${count}`).join(', ');
    return say(`{factor} was allotted to ${unit}s, so the replicates are ${unit}s: {each}.`, {
      factor: termName(trial, factor),
      each,
    });
  });
}
