import { compassPoint, oppositeSide } from '../compute/format/opposite-side.ts';
import type { Container } from '../model/trial.ts';

/** What stands on each side of a container's map; null where no landmark is given. */
export interface Orientation {
  top: string | null;
  right: string | null;
  bottom: string | null;
  left: string | null;
  /** True where column 1 lies to the right of the harvester. */
  columnsReversed: boolean;
}

/**
 * Turns a container's map the way the harvester stood: facing row 1, which is drawn at the top. Column 1 is
 * drawn at the left, unless both landmarks are points of the compass and say that it lay at the right: a map
 * never shows a mirror image of the ground.
 */
export function orientationOf(container: Container): Orientation {
  const ahead = container.row_1 ?? null;
  const beside = container.column_1 ?? null;
  const facing = ahead === null ? null : compassPoint(ahead);
  const side = beside === null ? null : compassPoint(beside);
  const columnsReversed = facing !== null && side !== null && (side - facing + 8) % 8 === 2;
  const across = beside === null ? null : oppositeSide(beside);
  return {
    top: ahead,
    bottom: ahead === null ? null : oppositeSide(ahead),
    left: columnsReversed ? across : beside,
    right: columnsReversed ? beside : across,
    columnsReversed,
  };
}
