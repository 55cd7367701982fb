import { say } from '../../model/say.ts';
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
    'error = what is left, squared and summed ÷ (cells − cultivars − trials + linked sets)',
    'cultivar × trial: F = error ÷ variance of a mean within the replicated trials, both of those trials alone',
  ],
  remarks: [
    'Beside this the trials may be taken as a sample of others that might have been (mixed model, REML). Differences hardly change, standard errors of means grow.',
    'Trials that were not replicated take part and are marked; their means are plain ones.',
  ],
  references: [
    'F. Yates (1933), The principles of orthogonality and confounding in replicated experiments, Journal of Agricultural Science 23, 108–145.',
    'H. D. Patterson (1978), Journal of the National Institute of Agricultural Botany 14, 401–412.',
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
  across(entries, name) {
    const entry = entries.find(({ verdict }) => verdict === 'compared');
    const residual = entry?.anova.find(({ term }) => term === 'residual');
    if (!entry || !residual || residual.mean_square === null) return null;
    const { cells, trials, linked_sets: sets, adjusted_means: means, differences, species } = entry;
    const counts = say('{cells} cells − {cultivars} cultivars − {trials} trials + {sets}', {
      cells: cells.length,
      cultivars: means.length,
      trials: trials.length,
      sets: sets.length,
    });
    const pair = differences.find(({ se }) => se !== null);
    const of = (cultivar: string) => means.find((mean) => mean.cultivar === cultivar)!.mean;
    return {
      species,
      of: 'the error, and a difference held against it',
      steps: [
        { name: 'Degrees of freedom', formula: `${counts} = ${String(residual.df)}` },
        {
          name: 'Error',
          formula: `${formatNumber(residual.sum_of_squares, 2)} ÷ ${String(residual.df)} = ${formatNumber(residual.mean_square, 2)}`,
        },
        ...(pair
          ? [
              {
                name: say('{a} less {b}', { a: name(pair.a), b: name(pair.b) }),
                formula: `${formatNumber(of(pair.a), 1)} − ${formatNumber(of(pair.b), 1)} = ${formatNumber(pair.estimate, 1)}, ${say('standard error {error}', { error: formatNumber(pair.se!, 1) })}`,
              },
            ]
          : []),
      ],
    };
  },
};
