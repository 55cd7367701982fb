/** A dense matrix of real numbers; `values` holds it column after column. */
export interface Matrix {
  readonly rows: number;
  readonly columns: number;
  readonly values: Float64Array;
}

/** A matrix of zeros. */
export function zeroMatrix(rows: number, columns: number): Matrix {
  return { rows, columns, values: new Float64Array(rows * columns) };
}

/** The identity matrix of a given size. */
export function identityMatrix(size: number): Matrix {
  const identity = zeroMatrix(size, size);
  for (let i = 0; i < size; i++) identity.values[i * size + i] = 1;
  return identity;
}

/** A matrix from an array of rows, all of one length. */
export function matrixFromRows(rows: readonly ArrayLike<number>[]): Matrix {
  const columns = rows[0]?.length ?? 0;
  const matrix = zeroMatrix(rows.length, columns);
  rows.forEach((row, i) => {
    if (row.length !== columns) {
      throw new Error(
        `matrixFromRows requires rows of one length: row 0 has ${columns}, row ${i} ${row.length}`,
      );
    }
    for (let j = 0; j < columns; j++) matrix.values[j * rows.length + i] = row[j]!;
  });
  return matrix;
}

/** A matrix from an array of columns, each of `rows` values. */
export function matrixFromColumns(rows: number, columns: readonly ArrayLike<number>[]): Matrix {
  const matrix = zeroMatrix(rows, columns.length);
  columns.forEach((column, j) => {
    if (column.length !== rows) {
      throw new Error(
        `matrixFromColumns requires columns of ${rows} values: column ${j} has ${column.length}`,
      );
    }
    matrix.values.set(column, j * rows);
  });
  return matrix;
}

/** One column, as a view that shares the matrix's storage. */
export function columnOf(matrix: Matrix, column: number): Float64Array {
  return matrix.values.subarray(column * matrix.rows, (column + 1) * matrix.rows);
}

/** The entry in a row and a column, counted from 0. */
export function entryOf(matrix: Matrix, row: number, column: number): number {
  return matrix.values[column * matrix.rows + row]!;
}

/** The rows of a matrix as arrays. */
export function rowsOf(matrix: Matrix): number[][] {
  return Array.from({ length: matrix.rows }, (_, i) =>
    Array.from({ length: matrix.columns }, (_, j) => entryOf(matrix, i, j)),
  );
}

/** The scalar product of two vectors of one length. */
export function dotProduct(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** The product A B. */
export function matrixProduct(a: Matrix, b: Matrix): Matrix {
  const product = zeroMatrix(a.rows, b.columns);
  for (let j = 0; j < b.columns; j++) {
    const target = columnOf(product, j);
    for (let k = 0; k < a.columns; k++) {
      const weight = b.values[j * b.rows + k]!;
      if (weight === 0) continue;
      const source = columnOf(a, k);
      for (let i = 0; i < a.rows; i++) target[i]! += source[i]! * weight;
    }
  }
  return product;
}

/** The product A' B, of columns with columns. */
export function crossProduct(a: Matrix, b: Matrix): Matrix {
  const product = zeroMatrix(a.columns, b.columns);
  // Many matrices here are small: a view of each column would take longer than its product.
  for (let j = 0; j < b.columns; j++) {
    for (let i = 0; i < a.columns; i++) {
      let sum = 0;
      for (let k = 0; k < a.rows; k++) sum += a.values[i * a.rows + k]! * b.values[j * b.rows + k]!;
      product.values[j * a.columns + i] = sum;
    }
  }
  return product;
}

/** The symmetric product A' D A, D the diagonal matrix of `weights` (ones where left out). */
export function gramMatrix(a: Matrix, weights?: Float64Array): Matrix {
  const gram = zeroMatrix(a.columns, a.columns);
  const weighted = new Float64Array(a.rows);
  for (let j = 0; j < a.columns; j++) {
    const column = columnOf(a, j);
    for (let i = 0; i < a.rows; i++) weighted[i] = column[i]! * (weights?.[i] ?? 1);
    for (let i = 0; i <= j; i++) {
      const product = dotProduct(columnOf(a, i), weighted);
      gram.values[j * a.columns + i] = product;
      gram.values[i * a.columns + j] = product;
    }
  }
  return gram;
}

/** The product A v with a vector. */
export function matrixTimesVector(a: Matrix, vector: Float64Array): Float64Array {
  const product = new Float64Array(a.rows);
  for (let j = 0; j < a.columns; j++) {
    const weight = vector[j]!;
    if (weight === 0) continue;
    const column = columnOf(a, j);
    for (let i = 0; i < a.rows; i++) product[i]! += column[i]! * weight;
  }
  return product;
}

/** The quadratic form a' M b. */
export function quadraticForm(a: Float64Array, m: Matrix, b: Float64Array): number {
  return dotProduct(a, matrixTimesVector(m, b));
}

/** The form L M L' for rows of weights `l`: one row and column for each of them. */
export function sandwich(l: readonly Float64Array[], m: Matrix): Matrix {
  const right = l.map((weights) => matrixTimesVector(m, weights));
  const form = zeroMatrix(l.length, l.length);
  l.forEach((weights, i) => {
    right.forEach((product, j) => {
      form.values[j * l.length + i] = dotProduct(weights, product);
    });
  });
  return form;
}
