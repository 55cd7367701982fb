import { levelNames } from '../../compute/format/level-names.ts';
import { drawWeightsByTreatment } from '../../draw/weights-by-treatment.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { namedFigures } from '../named-figures.ts';

export const weightsByTreatment: SheetComponent = {
  name: 'WeightsByTreatment',
  stands: 'on its own',
  holds: 'nothing',
  meaning: 'The figure of every weight by treatment, with the means.',
  attributes: [trialAttribute],
  example: () => '<WeightsByTreatment />',
  resolve(asked) {
    const found = askedFindings(asked);
    if (found === null) return null;
    const { trial, findings } = found;
    const names = levelNames(trial, asked.library.cultivars);
    return [
      {
        kind: 'figures',
        figures: namedFigures(asked, trial, [drawWeightsByTreatment(trial, findings, { names })]),
      },
    ];
  },
};
