import { say } from '../model/say.ts';
import type { Findings } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';
import { countsOf } from './counts.ts';
import { type Cut, cutNumbers } from './cuts.ts';
import { describe } from './describe.ts';
import { inferences } from './inference/inferences.ts';
import { nextTrial } from './next-trial.ts';
import { nutrientsOf } from './nutrients/solution.ts';
import { otherVariables } from './other-variables.ts';
import { positionEffects } from './position/position-effects.ts';
import { waterUsed } from './water/water-used.ts';
import { type Yields, yieldsOf } from './yields.ts';

/**
 * What a finished trial's weights support: weights in g, areas in m2, to full precision. A number that
 * cannot be computed is null beside a reason.
 */
export function computeFindings(trial: Trial): Findings {
  const variable = trial.metadata.variables[0]!;
  const cuts = cutNumbers(trial);
  const yields = new Map<Cut, Yields>();
  const yieldsOfCut = (cut: Cut): Yields => {
    const known = yields.get(cut) ?? yieldsOf(trial, cut);
    yields.set(cut, known);
    return known;
  };
  const overall = yieldsOfCut('all');
  const inference = inferences(trial, yieldsOfCut);
  const others = otherVariables(trial);
  return {
    trial: trial.id,
    version: trial.metadata.version,
    variable: {
      id: variable.id,
      name: say(variable.name),
      unit: isWeight(variable.unit) ? 'g' : (variable.unit ?? '1'),
    },
    counts: countsOf(trial),
    treatments: describe(trial, overall, 'all'),
    treatments_by_cut:
      cuts.length > 1 ? cuts.map((cut) => ({ cut, treatments: describe(trial, yieldsOfCut(cut), cut) })) : [],
    inference,
    position: positionEffects(trial, overall),
    water: waterUsed(trial, overall),
    nutrients: trial.metadata.nutrients ? nutrientsOf(trial.metadata.nutrients) : null,
    next_trial: nextTrial(trial, inference, []),
    ...(others.length > 0 ? { other_variables: others } : {}),
  };
}
