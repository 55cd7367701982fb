import type { Treatment } from '../../model/trial.ts';
import { inOrderOfLots, type LotPlace } from './lot-place.ts';

/** The rows of layout.csv, headings first: container, row, column, block and plot where there are any, the factors. */
export function layoutRows<T extends LotPlace>(
  treatments: ReadonlyMap<T, Treatment>,
  containers: readonly string[],
  factors: readonly string[],
): string[][] {
  const places = inOrderOfLots([...treatments.keys()], containers);
  const inBlocks = places.some(({ block }) => block !== null);
  const inPlots = places.some(({ plot }) => plot !== null);
  const optional = <V>(wanted: boolean, value: V) => (wanted ? [value] : []);
  const head = [
    'container',
    'row',
    'column',
    ...optional(inBlocks, 'block'),
    ...optional(inPlots, 'plot'),
    ...factors,
  ];
  const rows = places.map((place) => [
    place.container,
    String(place.row),
    String(place.column),
    ...optional(inBlocks, place.block ?? ''),
    ...optional(inPlots, place.plot ?? ''),
    ...factors.map((id) => treatments.get(place)?.[id] ?? ''),
  ]);
  return [head, ...rows];
}
