import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const steadinessMethod: Method = {
  id: 'steadiness',
  name: 'How steady a cultivar is',
  use: 'Whether a cultivar does about as well beside others in good seasons as in poor ones. Its means are set against the trials’ adjusted means: a slope above 1 gains more than others where trials yield more, and loses more where they yield less. What the line leaves, and what cultivar and trial together leave, say how far it strays.',
  formula: [
    'slope = Σ (trial’s mean − their mean)(cultivar’s mean there − its mean) ÷ Σ (trial’s mean − their mean)²',
    'deviation mean square = what the line leaves, squared and summed ÷ (trials − 2)',
    'ecovalence = Σ (what cultivar + trial leave of its means)²',
    'stability variance = (p (p − 1) ecovalence − Σ ecovalences) ÷ ((q − 1)(p − 1)(p − 2)), p cultivars in q trials',
    'better in good seasons, in poor ones: its line at the best and at the poorest trial less the trial’s mean, where the 95% limits leave out 0',
  ],
  remarks: [
    'With fewer than four trials that grew several cultivars it is not judged (common practice, no source).',
    'The stability variance is reckoned for tables without holes alone. It may come out below zero, which says no more than that it is small.',
    'The trials’ means come from the same cultivars, so that slopes average 1 by themselves: a slope says how a cultivar stood among these others, not among all.',
  ],
  references: [
    'K. W. Finlay and G. N. Wilkinson (1963), The analysis of adaptation in a plant-breeding programme, Australian Journal of Agricultural Research 14, 742–754.',
    'S. A. Eberhart and W. A. Russell (1966), Stability parameters for comparing varieties, Crop Science 6, 36–40.',
    'G. Wricke (1962), Zeitschrift für Pflanzenzüchtung 47, 92–96.',
    'G. K. Shukla (1972), Some statistical aspects of partitioning genotype-environmental components of variability, Heredity 29, 237–245.',
  ],
  example: () => null,
  across(entries, name) {
    for (const { species, stability, cells, trials } of entries) {
      const row = stability.find(({ regression_slope: slope }) => slope !== null);
      if (!row) continue;
      const own = trials.flatMap(({ id, season, adjusted_mean: index }) => {
        const mean = cells.find(({ cultivar, trial }) => cultivar === row.cultivar && trial === id)?.mean;
        return mean === undefined || index === null ? [] : [{ season, mean, index }];
      });
      return {
        species,
        of: say('{cultivar}, its mean beside the trial’s', { cultivar: name(row.cultivar) }),
        steps: [
          ...own.map(({ season, mean, index }) => ({
            name: season,
            formula: say('{mean} beside {trial}', {
              mean: formatNumber(mean, 1),
              trial: formatNumber(index, 1),
            }),
          })),
          { name: 'Slope', formula: formatNumber(row.regression_slope!, 2) },
          { name: 'Ecovalence', formula: formatNumber(row.ecovalence, 1) },
        ],
      };
    }
    return null;
  },
};
