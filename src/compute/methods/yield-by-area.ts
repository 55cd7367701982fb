import { treatmentName } from '../format/level-names.ts';
import { areaSteps } from '../workings/area-steps.ts';
import type { Method } from './method.ts';

export const yieldByArea: Method = {
  id: 'yield-by-area',
  name: 'Yield by area and by day',
  use: 'What a square metre of cover gave. Each position has an equal part of its container’s cover. Pots of unknown weight are left out, and their part of the cover with them.',
  formula: [
    'yield = weight of the pots ÷ (their number × cover ÷ positions of the grid)',
    'yield a day = yield ÷ days from transplanting (from sowing where it was sown in place) to the last cut',
  ],
  references: ['Common practice, no source.'],
  example({ trial, findings, names }) {
    const description = findings.treatments.find((each) => areaSteps(each).length > 0);
    if (!description) return null;
    return { of: treatmentName(trial, description.treatment, names), steps: areaSteps(description) };
  },
};
