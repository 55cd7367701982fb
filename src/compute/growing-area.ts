import type { Container } from '../model/trial.ts';
import { metresIn } from '../model/units.ts';

/** The area of a rectangle in m2. */
export function squareMetres(rectangle: { length: number; width: number; unit: string }): number {
  const metres = metresIn[rectangle.unit]!;
  return rectangle.length * metres * (rectangle.width * metres);
}

/** The part of the container's cover, in m2, that one position of its grid has; null where no cover is given. */
export function coverOfPosition(container: Container): number | null {
  if (!container.cover) return null;
  return squareMetres(container.cover) / (container.rows * container.columns);
}
