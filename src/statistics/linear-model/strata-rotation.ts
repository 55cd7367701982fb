import { householderQr, rotate } from './householder-qr.ts';
import { type Matrix, matrixFromColumns } from './matrix.ts';

/** A level of grouping that carries random error, such as container or plot. */
export interface Stratum {
  readonly name: string;
  /** The group of each observation (or unit), numbered from 0. */
  readonly groups: readonly number[];
}

/** Where a stratum's dimensions lie among the rotated rows. */
export interface StratumRows {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

export interface StrataRotation {
  /** Rows that belong to the intercept and the blocks: from 0 to here. */
  readonly baseRank: number;
  readonly strata: readonly StratumRows[];
  readonly rotate: (vector: ArrayLike<number>) => Float64Array;
}

/**
 * Turns the space of units so that the first rows belong to the base (intercept and blocks), the next to
 * the first stratum's groups as far as the base leaves them, and so on; what is left belongs to the last
 * named stratum where its groups are the units themselves, otherwise to the finest, `residual`.
 * `rootSizes` are the square roots of the numbers of observations in the units.
 */
export function strataRotation(
  base: Matrix,
  strata: readonly Stratum[],
  residual: string,
  rootSizes: Float64Array,
): StrataRotation {
  const units = base.rows;
  const columns = Array.from({ length: base.columns }, (_, j) =>
    base.values.subarray(j * units, (j + 1) * units),
  );
  const owner = columns.map(() => -1);
  const counts = strata.map(({ groups }) => new Set(groups).size);
  strata.forEach(({ groups }, s) => {
    if (counts[s] === units) return;
    const indicators = new Map<number, Float64Array>();
    groups.forEach((group, i) => {
      let indicator = indicators.get(group);
      if (!indicator) indicators.set(group, (indicator = new Float64Array(units)));
      indicator[i] = rootSizes[i]!;
    });
    for (const indicator of indicators.values()) {
      columns.push(indicator);
      owner.push(s);
    }
  });
  const qr = householderQr(matrixFromColumns(units, columns));
  const owners = qr.independent.map((column) => owner[column]!);
  const baseRank = owners.filter((stratum) => stratum === -1).length;
  const rows: StratumRows[] = [];
  let from = baseRank;
  strata.forEach(({ name }, s) => {
    const isUnits = counts[s] === units;
    const to = isUnits ? units : from + owners.filter((stratum) => stratum === s).length;
    rows.push({ name, from, to });
    from = to;
  });
  rows.push({ name: residual, from, to: units });
  return { baseRank, strata: rows, rotate: (vector) => rotate(qr, vector) };
}
