import { digitsAttribute, perAttribute } from '../asked-measure.ts';
import { cutAttribute, whereAttribute } from '../asked-treatment.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { type FindQuantity, writtenQuantity } from '../quantity.ts';
import {
  adjustedMean,
  ofDescription,
  ofSummary,
  percentOfCheck,
  replicates,
} from '../treatment-quantities.ts';
import { inAll, ofCounts, ofWater } from '../trial-quantities.ts';

/** Every number that a sheet may ask for, by the name that `of` gives it. */
const quantities: Readonly<Record<string, FindQuantity>> = {
  mean: ofSummary('mean'),
  adjusted_mean: adjustedMean,
  percent_of_check: percentOfCheck,
  sd: ofSummary('sd'),
  cv: ofSummary('cv'),
  n: ofSummary('n'),
  minimum: ofSummary('minimum'),
  lower_quartile: ofSummary('lower_quartile'),
  median: ofSummary('median'),
  upper_quartile: ofSummary('upper_quartile'),
  maximum: ofSummary('maximum'),
  yield: ofDescription('yield'),
  yield_per_day: ofDescription('yield_per_day'),
  days_from_sowing: ofDescription('days_from_sowing'),
  days_from_transplanting: ofDescription('days_from_transplanting'),
  replicates,
  plants: ofDescription('plants'),
  pots: ofDescription('pots'),
  containers: ofDescription('containers'),
  all_containers: inAll('containers'),
  all_pots: inAll('pots'),
  plants_set: ofCounts('set'),
  plants_weighed: ofCounts('weighed'),
  plants_dead: ofCounts('dead'),
  plants_culled: ofCounts('culled'),
  plants_not_weighed: ofCounts('not_weighed'),
  plants_no_regrowth: ofCounts('no_regrowth'),
  water_used: ofWater('used_L'),
  water_per_kg: ofWater('L_per_kg'),
};

export const value: SheetComponent = {
  name: 'Value',
  stands: 'in a sentence',
  holds: 'nothing',
  meaning:
    'A number of the findings with its unit, metric and US, its 95% interval where the findings have one, and a link to its working.',
  attributes: [
    {
      name: 'of',
      needed: true,
      choices: Object.keys(quantities),
      meaning:
        'Which number. Those whose names begin with plants_ or all_ are of the whole trial, the others of one treatment.',
    },
    perAttribute,
    whereAttribute,
    cutAttribute,
    digitsAttribute,
    {
      name: 'interval',
      choices: ['no'],
      meaning: 'no leaves the interval out, where the same sentence or a table beside it tells it.',
    },
    { name: 'container', meaning: 'The container, for the water that it used.' },
    trialAttribute,
  ],
  example: ({ treatment }) =>
    `${treatment} gave <Value of="mean" where="${treatment}" digits="0" /> on average.`,
  resolve(asked) {
    const found = askedFindings(asked);
    const find = quantities[asked.attribute('of') ?? ''];
    const quantity = found && find ? find(asked, found) : null;
    return found === null || quantity === null ? null : writtenQuantity(asked, found, quantity);
  },
};
