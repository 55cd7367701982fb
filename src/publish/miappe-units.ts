import type { Position, Trial } from '../model/trial.ts';
import { given, type MiappeRecord } from './miappe-record.ts';

const placed = ({ block, plot, container, row, column }: Position): string =>
  [
    ...(block === null ? [] : [`block:${block}`]),
    `container:${container}`,
    ...(plot === null ? [] : [`plot:${plot}`]),
    `row:${String(row)}`,
    `column:${String(column)}`,
  ].join('; ');

/** Every position of the trial as an observation unit, with where it stood and what it was given. */
export function miappeUnits({ positions }: Trial): MiappeRecord[] {
  return positions.map((position) => ({
    obsUnitId: `${position.container}-${String(position.row)}-${String(position.column)}`,
    obsUnitType: 'position',
    spatialDistribution: placed(position),
    ...given(
      'obsUnitFactorValue',
      Object.entries(position.treatment)
        .map(([factor, level]) => `${factor}:${level}`)
        .join('; '),
    ),
  }));
}
