import { say } from '../../model/say.ts';
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

interface Choice {
  find: FindQuantity;
  /** What it is, for the page of components. */
  meaning: string;
}

/** Every number that a sheet may ask for, by the name that `of` gives it. */
const quantities: Readonly<Record<string, Choice>> = {
  mean: { find: ofSummary('mean'), meaning: 'the mean of what was weighed' },
  adjusted_mean: {
    find: adjustedMean,
    meaning: 'the mean that the analysis gives, allowing for blocks and for what was lost',
  },
  percent_of_check: { find: percentOfCheck, meaning: 'the mean in percent of the check’s' },
  sd: { find: ofSummary('sd'), meaning: 'the standard deviation' },
  cv: { find: ofSummary('cv'), meaning: 'the coefficient of variation, in percent' },
  n: { find: ofSummary('n'), meaning: 'how many plants, pots or containers the mean is of' },
  minimum: { find: ofSummary('minimum'), meaning: 'the lowest' },
  lower_quartile: { find: ofSummary('lower_quartile'), meaning: 'the lower quartile' },
  median: { find: ofSummary('median'), meaning: 'the median' },
  upper_quartile: { find: ofSummary('upper_quartile'), meaning: 'the upper quartile' },
  maximum: { find: ofSummary('maximum'), meaning: 'the highest' },
  yield: { find: ofDescription('yield'), meaning: 'the weight by area' },
  yield_per_day: { find: ofDescription('yield_per_day'), meaning: 'the weight by area and day' },
  days_from_sowing: { find: ofDescription('days_from_sowing'), meaning: 'days from sowing to the cut' },
  days_from_transplanting: {
    find: ofDescription('days_from_transplanting'),
    meaning: 'days from planting out to the cut',
  },
  replicates: { find: replicates, meaning: 'how many experimental units the treatment had' },
  plants: { find: ofDescription('plants'), meaning: 'how many plants the treatment had' },
  pots: { find: ofDescription('pots'), meaning: 'how many pots the treatment had' },
  containers: { find: ofDescription('containers'), meaning: 'in how many containers the treatment stood' },
  all_containers: { find: inAll('containers'), meaning: 'how many containers the trial had' },
  all_pots: { find: inAll('pots'), meaning: 'how many pots the trial had' },
  plants_set: { find: ofCounts('set'), meaning: 'plants set in the whole trial' },
  plants_weighed: { find: ofCounts('weighed'), meaning: 'plants weighed at every cut' },
  plants_dead: { find: ofCounts('dead'), meaning: 'plants that died' },
  plants_culled: { find: ofCounts('culled'), meaning: 'plants that were culled' },
  plants_not_weighed: {
    find: ofCounts('not_weighed'),
    meaning: 'plants whose weight is not known at some cut',
  },
  plants_no_regrowth: { find: ofCounts('no_regrowth'), meaning: 'plants that did not grow again' },
  water_used: { find: ofWater('used_L'), meaning: 'water that a container used' },
  water_per_kg: {
    find: ofWater('L_per_kg'),
    meaning: 'water that a container used for each kg of fresh weight',
  },
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
      choiceMeanings: Object.fromEntries(
        Object.entries(quantities).map(([name, { meaning }]) => [name, meaning]),
      ),
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
  example: ({ other, otherName }) =>
    say('{name} gave {amount}{per} on average.', {
      name: otherName,
      amount: `<Value of="mean" where="${other}" digits="0" />`,
      per: '',
    }),
  resolve(asked) {
    const found = askedFindings(asked);
    const choice = quantities[asked.attribute('of') ?? ''];
    const quantity = found && choice ? choice.find(asked, found) : null;
    return found === null || quantity === null ? null : writtenQuantity(asked, found, quantity);
  },
};
