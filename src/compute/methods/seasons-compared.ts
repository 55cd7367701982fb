import { meanOf } from '../../statistics/mean.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatQuantity } from '../format/format-quantity.ts';
import { headlineOf } from '../words/headline.ts';
import type { Method } from './method.ts';

export const seasonsCompared: Method = {
  id: 'seasons-compared',
  name: 'Cultivars compared across seasons',
  use: 'Which cultivar, over several trials. Each trial brings its own means, and what is compared is how far cultivars stood from one another within the trials that they shared: a good season favours nobody. The trial is the replicate, and what cultivar and trial leave of the table is the error. Cultivars that no chain of shared trials connects are never compared.',
  formula: [
    'mean of a cultivar in a trial = general mean + cultivar + trial + what is left, by least squares',
    'adjusted mean = general mean + cultivar, over all trials of the linked set',
    'error = what is left, squared and summed ÷ (cells − cultivars − trials + 1)',
    'steadiness: slope of a cultivar’s means on the trials’ means; its share of what is left (ecovalence)',
  ],
  remarks: [
    'With fewer than four trials it cannot be judged how steady a cultivar is.',
    'Trials that were not replicated take part and are marked; their means are plain ones.',
  ],
  references: [
    'F. Yates (1933), The principles of orthogonality and confounding in replicated experiments, Journal of Agricultural Science 23, 108–145.',
    'H. D. Patterson (1978), Journal of the National Institute of Agricultural Botany 14, 401–412.',
    'K. W. Finlay and G. N. Wilkinson (1963), The analysis of adaptation in a plant-breeding programme, Australian Journal of Agricultural Research 14, 742–754.',
    'G. Wricke (1962), Zeitschrift für Pflanzenzüchtung 47, 92–96.',
    'G. K. Shukla (1972), Heredity 29, 237–245.',
  ],
  example({ trial, findings, names }) {
    const factor = (trial.metadata.factors ?? []).find(({ kind }) => kind === 'cultivar');
    const { summaryOf } = headlineOf(trial, findings);
    const means = findings.treatments.flatMap((each) => {
      const mean = summaryOf(each)?.mean ?? null;
      const level = factor && each.treatment[factor.id];
      return mean === null || level === undefined ? [] : [{ name: names(factor!.id, level), mean }];
    });
    if (means.length < 2) return null;
    const { unit } = findings.variable;
    const general = meanOf(means.map(({ mean }) => mean));
    return {
      of: 'what this trial brings: each cultivar beside the trial’s mean',
      steps: means.map(({ name, mean }) => ({
        name,
        formula: `${formatNumber(mean, 1)} − ${formatNumber(general, 1)} = ${formatQuantity(mean - general, unit, 1, { plus: true }).metric}`,
      })),
    };
  },
};
