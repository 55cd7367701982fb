import type { Findings } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';
import { countsOf } from './counts.ts';
import { cutNumbers } from './cuts.ts';
import { describe } from './describe.ts';
import { waterUsed } from './water.ts';
import { yieldsOf } from './yields.ts';

/**
 * What a finished trial's weights support: weights in g, areas in m2, to full precision. A number that
 * cannot be computed is null beside a reason.
 */
export function computeFindings(trial: Trial): Findings {
  const variable = trial.metadata.variables[0]!;
  const cuts = cutNumbers(trial);
  const overall = yieldsOf(trial, 'all');
  return {
    trial: trial.id,
    version: trial.metadata.version,
    variable: {
      id: variable.id,
      name: variable.name,
      unit: isWeight(variable.unit) ? 'g' : (variable.unit ?? '1'),
    },
    counts: countsOf(trial),
    treatments: describe(trial, overall, 'all'),
    treatments_by_cut:
      cuts.length > 1
        ? cuts.map((cut) => ({ cut, treatments: describe(trial, yieldsOf(trial, cut), cut) }))
        : [],
    inference: [],
    position: [],
    water: waterUsed(trial, overall),
    nutrients: null,
    next_trial: [],
  };
}
