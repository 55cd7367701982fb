import { say } from '../../model/say.ts';
import { unitSentences } from '../tables/inference/unit-sentences.ts';
import { finestUnit } from '../experimental-unit.ts';
import type { Method } from './method.ts';

export const experimentalUnitMethod: Method = {
  id: 'experimental-unit',
  name: 'Experimental unit',
  use: 'What a treatment was allotted to, read off the layout: the coarsest of container, plot and position within which the factor never varies. Only these units are replicates. Twelve plants in one tank are twelve looks at one tank.',
  formula: [
    'unit of a factor = the coarsest stratum within which the factor never varies',
    'replicates of a level = its units with a weight left',
  ],
  references: [
    'S. H. Hurlbert (1984), Pseudoreplication and the design of ecological field experiments, Ecological Monographs 54, 187–211.',
    'R. A. Bailey (2008), Design of Comparative Experiments, Cambridge University Press.',
  ],
  example({ trial, findings, names }) {
    const [analysis] = findings.inference;
    if (analysis) {
      return {
        of: 'the layout',
        steps: unitSentences(trial, names, analysis).map((formula) => ({ name: 'Unit', formula })),
      };
    }
    const unit = finestUnit(trial);
    return unit === null
      ? null
      : {
          of: 'the layout',
          steps: [
            { name: 'Unit', formula: say('the treatments never vary within a {unit}', { unit: say(unit) }) },
          ],
        };
  },
};
