import { meanOf } from '../mean.ts';
import { type Matrix, matrixFromColumns } from './matrix.ts';
import { sumToZeroContrasts } from './sum-to-zero-contrasts.ts';

/** A factor: for each observation the index of its level, from 0 to `levels` - 1. */
export interface Factor {
  readonly name: string;
  readonly levels: number;
  readonly values: readonly number[];
}

/** A number known of each observation, such as its row in the container. */
export interface Covariate {
  readonly name: string;
  readonly values: readonly number[];
  /** Where adjusted means stand: the mean of the values unless given. */
  readonly centre?: number;
}

/** A term of the model: its name, its factors (or its covariate), and its columns of the matrix. */
export interface ModelTerm {
  readonly name: string;
  readonly factors: readonly string[];
  readonly start: number;
  readonly count: number;
}

/** A model of fixed terms: the matrix's column 0 is the intercept, the others follow term by term. */
export interface ModelTerms {
  readonly factors: readonly Factor[];
  readonly covariates: readonly Covariate[];
  readonly terms: readonly ModelTerm[];
  readonly matrix: Matrix;
}

/**
 * Builds the matrix of a model from factors and terms. Each term is a list of factor names, its columns
 * the products of its factors' orthonormal sum-to-zero contrasts, or a list of one covariate's name, its
 * column the covariate about its centre. Terms keep their order, their name is their factors' joined by a
 * colon. Main effects that the list leaves out are not added.
 */
export function modelTerms(
  observations: number,
  factors: readonly Factor[],
  terms: readonly (readonly string[])[],
  covariates: readonly Covariate[] = [],
): ModelTerms {
  for (const variable of [...factors, ...covariates]) {
    if (variable.values.length !== observations) {
      throw new Error(
        `modelTerms requires ${observations} values of ${variable.name}, not ${variable.values.length}`,
      );
    }
  }
  for (const factor of factors) {
    const outside = factor.values.find((level) => !(level >= 0 && level < factor.levels));
    if (outside !== undefined) throw new Error(`modelTerms: ${factor.name} has no level ${outside}`);
  }
  const columns: Float64Array[] = [new Float64Array(observations).fill(1)];
  const built: ModelTerm[] = [];
  for (const names of terms) {
    const start = columns.length;
    columns.push(...termColumns(observations, names, factors, covariates));
    built.push({ name: names.join(':'), factors: names, start, count: columns.length - start });
  }
  return { factors, covariates, terms: built, matrix: matrixFromColumns(observations, columns) };
}

/** The weights of one combination of levels in a term's columns: one number for each column. */
export function termWeights(
  model: ModelTerms,
  term: ModelTerm,
  levelOf: (factor: string) => number,
): Float64Array {
  let weights: Float64Array = Float64Array.of(1);
  for (const name of term.factors) {
    const factor = model.factors.find((candidate) => candidate.name === name);
    if (!factor) throw new Error(`termWeights: ${name} is no factor of the model`);
    weights = kronecker(weights, contrastRow(factor.levels, levelOf(name)));
  }
  return weights;
}

/** Whether the factors of one term are all among those of another. */
export function isContained(inner: readonly string[], outer: readonly string[]): boolean {
  return inner.every((name) => outer.includes(name));
}

function termColumns(
  observations: number,
  names: readonly string[],
  factors: readonly Factor[],
  covariates: readonly Covariate[],
): Float64Array[] {
  const covariate = covariates.find(({ name }) => names.length === 1 && name === names[0]);
  if (covariate) {
    const centre = covariate.centre ?? meanOf(covariate.values);
    return [Float64Array.from(covariate.values, (value) => value - centre)];
  }
  let columns: Float64Array[] = [new Float64Array(observations).fill(1)];
  for (const name of names) {
    const factor = factors.find((candidate) => candidate.name === name);
    if (!factor) throw new Error(`modelTerms: ${name} is no factor or covariate of the model`);
    const contrasts = sumToZeroContrasts(factor.levels);
    columns = columns.flatMap((column) =>
      Array.from({ length: contrasts.columns }, (_, j) =>
        column.map((value, i) => value * contrasts.values[j * factor.levels + factor.values[i]!]!),
      ),
    );
  }
  return columns;
}

function contrastRow(levels: number, level: number): Float64Array {
  const contrasts = sumToZeroContrasts(levels);
  return Float64Array.from({ length: levels - 1 }, (_, j) => contrasts.values[j * levels + level]!);
}

function kronecker(left: Float64Array, right: Float64Array): Float64Array {
  const product = new Float64Array(left.length * right.length);
  left.forEach((a, i) => {
    right.forEach((b, j) => {
      product[i * right.length + j] = a * b;
    });
  });
  return product;
}
