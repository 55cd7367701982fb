import type { Container, Position, Trial } from '../../model/trial.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { walkingOrder } from './walking-order.ts';

/** One line to be filled in: a plant, or a pot that is weighed whole. */
export interface SheetLine {
  /** From 1, over the whole container. */
  number: number;
  row: number;
  column: number;
  /** From 1; null where the pot is weighed whole. */
  plant: number | null;
  treatment: string;
}

/** The sheet of one container. */
export interface WeighingSheet {
  container: Container;
  /** True where some pot holds several plants that are weighed singly. */
  severalPlants: boolean;
  lines: SheetLine[];
}

/** What is to be weighed at one cut, container by container, in the order in which it is walked. */
export function weighingSheets(trial: Trial, names: LevelNames): WeighingSheet[] {
  const whole = trial.metadata.variables[0]!.of === 'pot';
  return trial.metadata.containers.flatMap((container) => {
    const positions = trial.positions.filter((position) => position.container === container.id);
    if (positions.length === 0) return [];
    const lines = walkingOrder(positions, 'row by row').flatMap((position) =>
      plantsOf(position, whole).map((plant) => ({
        row: position.row,
        column: position.column,
        plant,
        treatment: treatmentName(trial, position.treatment, names),
      })),
    );
    return [
      {
        container,
        severalPlants: !whole && positions.some(({ plants }) => plants > 1),
        lines: lines.map((line, index) => ({ number: index + 1, ...line })),
      },
    ];
  });
}

function plantsOf({ plants }: Position, whole: boolean): (number | null)[] {
  return whole ? [null] : Array.from({ length: plants }, (_, index) => index + 1);
}
