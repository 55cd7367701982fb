import type { Position } from '../../model/trial.ts';

/** Every row from column 1 on; or there and back, so that nobody walks the length of a container for nothing. */
export type Walk = 'row by row' | 'there and back';

/**
 * The positions of a container in the order in which they are walked: by rows, from row 1 on.
 *
 * @param positions of one container
 */
export function walkingOrder(positions: readonly Position[], walk: Walk): Position[] {
  const rows = [...Map.groupBy(positions, ({ row }) => row)].sort(([a], [b]) => a - b);
  return rows.flatMap(([, ofRow], index) => {
    const backwards = walk === 'there and back' && index % 2 === 1;
    return [...ofRow].sort((a, b) => (backwards ? b.column - a.column : a.column - b.column));
  });
}
