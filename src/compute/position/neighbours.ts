import { type Matrix, zeroMatrix } from '../../statistics/linear-model/matrix.ts';

/** Rook neighbours: 1 for two positions side by side in a row or column, 0 for any others. */
export function rookNeighbours(positions: readonly { row: number; column: number }[]): Matrix {
  const size = positions.length;
  const weights = zeroMatrix(size, size);
  const at = new Map(positions.map(({ row, column }, index) => [`${row} ${column}`, index]));
  positions.forEach(({ row, column }, index) => {
    for (const [down, along] of [
      [1, 0],
      [0, 1],
    ] as const) {
      const other = at.get(`${row + down} ${column + along}`);
      if (other === undefined) continue;
      weights.values[other * size + index] = 1;
      weights.values[index * size + other] = 1;
    }
  });
  return weights;
}
