import { levelNames } from '../../compute/format/level-names.ts';
import { treatmentSummaryTable } from '../../compute/tables/treatment-summary.ts';
import { say } from '../../model/say.ts';
import { askedMeasure, perAttribute } from '../asked-measure.ts';
import { askedCut, cutAttribute } from '../asked-treatment.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { refuseNoValue } from '../refuse.ts';
import { named } from '../named.ts';
import { workingAnchor } from '../working-anchor.ts';

export const treatments: SheetComponent = {
  name: 'Treatments',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'The table of treatments: n, mean, standard deviation and coefficient of variation, and the interval of the mean where the findings have one. Each number leads to its working.',
  attributes: [perAttribute, cutAttribute, trialAttribute],
  example: () => '<Treatments />',
  resolve(asked) {
    const found = askedFindings(asked);
    const given = found && askedCut(asked, found.findings);
    if (found === null || given === null) return null;
    const { trial, findings } = found;
    const measure = askedMeasure(asked, trial);
    if (given.descriptions.every((each) => each[measure] === null))
      return refuseNoValue(asked, 'per', say('the trial gives nothing by this measure'));
    const names = levelNames(trial, asked.library.cultivars);
    const table = treatmentSummaryTable(trial, findings, names, given.descriptions, measure, (row) =>
      workingAnchor(given.cut, row, measure, given.descriptions),
    );
    const caption = named(asked, trial, table.caption);
    return [{ kind: 'tables', tables: [{ ...table, caption }], page: `trials/${trial.id}/` }];
  },
};
