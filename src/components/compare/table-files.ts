import type { Choice } from '../../compare/choice/choice.ts';
import { shownAgainst, withPairsAgainst } from '../../compare/pairs-shown.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { csvText, type Table } from '../../publish/csv.ts';
import { keepFile } from '../keep-file.ts';
import type { PageComparison } from './comparison-data.ts';

type Named = Pick<PageComparison, 'name' | 'title'>;

/** Hands a table of what is shown to the reader as CSV, to full precision. */
export function keepTable(table: string, entry: Seasons, choice: Choice, comparison: PageComparison): void {
  const shown = withPairsAgainst(entry, shownAgainst(entry, choice.against));
  const make = tables[table];
  if (make === undefined) return;
  const text = csvText(make(shown, comparison));
  keepFile(`${choice.crop}-${choice.measure}-${table}.csv`, new Blob([text], { type: 'text/csv' }));
}

/** The tables that can be kept, by the name on their button. */
export const tables: Readonly<Record<string, (entry: Seasons, comparison: Named) => Table>> = {
  means: ({ cells, trials, measure, unit }, { name, title }) => ({
    columns: [
      'cultivar',
      'cultivar_name',
      'trial',
      'trial_title',
      'season',
      'replicated',
      'measure',
      'unit',
      'mean',
      'standard_error',
      'n',
      'percent_of_check',
    ],
    rows: cells.map(({ cultivar, trial, mean, se, n, percent_of_check: percent }) => {
      const of = trials.find(({ id }) => id === trial);
      const replicated = of === undefined ? '' : of.replicated ? 'yes' : 'no';
      return [
        cultivar,
        name(cultivar),
        trial,
        title(trial),
        of?.season ?? '',
        replicated,
        measure,
        unit,
        mean,
        se,
        n,
        percent,
      ];
    }),
  }),
  adjusted: ({ adjusted_means: means, unit }, { name }) => ({
    columns: [
      'cultivar',
      'cultivar_name',
      'unit',
      'adjusted_mean',
      'standard_error',
      'df',
      'lower_95',
      'upper_95',
      'letters',
      'trials',
    ],
    rows: means.map(({ cultivar, mean, se, df, lower, upper, letters, trials }) => [
      cultivar,
      name(cultivar),
      unit,
      mean,
      se,
      df,
      lower,
      upper,
      letters,
      trials,
    ]),
  }),
  differences: ({ differences, unit }, { name }) => ({
    columns: [
      'a',
      'a_name',
      'b',
      'b_name',
      'unit',
      'a_less_b',
      'standard_error',
      'df',
      'lower_95',
      'upper_95',
      'p_adjusted',
    ],
    rows: differences.map(({ a, b, estimate, se, df, lower, upper, p_adjusted: p }) => [
      a,
      name(a),
      b,
      name(b),
      unit,
      estimate,
      se,
      df,
      lower,
      upper,
      p,
    ]),
  }),
  steadiness: ({ stability }, { name }) => ({
    columns: [
      'cultivar',
      'cultivar_name',
      'trials',
      'regression_slope',
      'deviation_mean_square',
      'ecovalence',
      'stability_variance',
    ],
    rows: stability.map((each) => [
      each.cultivar,
      name(each.cultivar),
      each.trials,
      each.regression_slope,
      each.deviation_mean_square,
      each.ecovalence,
      each.stability_variance,
    ]),
  }),
};
