import { quantileOfSorted, sorted } from './quantile.ts';
import { present, type Recorded } from './statistic.ts';

/** Minimum, quartiles and maximum, in the unit of the data; all null where no value is present. */
export interface FiveNumberSummary {
  n: number;
  missing: number;
  minimum: number | null;
  lowerQuartile: number | null;
  median: number | null;
  upperQuartile: number | null;
  maximum: number | null;
}

/**
 * The five-number summary of recorded data, its quartiles by R's type 7 (linear interpolation between order
 * statistics).
 *
 * @example fiveNumberSummary([1, 2, 3, 4]).lowerQuartile // 1.75
 */
export function fiveNumberSummary(values: Recorded): FiveNumberSummary {
  const { numbers, missing } = present(values, 'a five-number summary');
  const ascending = sorted(numbers);
  const at = (p: number) => (ascending.length === 0 ? null : quantileOfSorted(ascending, p));
  return {
    n: numbers.length,
    missing,
    minimum: at(0),
    lowerQuartile: at(0.25),
    median: at(0.5),
    upperQuartile: at(0.75),
    maximum: at(1),
  };
}
