import type { Status } from '../model/trial.ts';
import { element, round } from './svg.ts';

/** A status that carries a mark. */
export type MarkedStatus = Exclude<Status, 'weighed'>;

/** In the order of the key. */
export const markedStatuses: readonly MarkedStatus[] = [
  'dead',
  'no regrowth',
  'not weighed',
  'culled',
  'not planted',
];

/**
 * Shapes within -1 to 1, each unlike the others without any colour: a cross, a stump above the ground, a
 * question mark, a square struck out, an empty hole.
 */
const shapes: Readonly<Record<MarkedStatus, string>> = {
  dead: 'M-.8-.8L.8 .8M-.8 .8L.8-.8',
  'no regrowth': 'M-.95 .8H.95M-.45 .8V-.5L.45-.8V.8',
  'not weighed': 'M-.55-.4A.55 .5 0 1 1 0 .05V.4M0 .8V.95',
  culled: 'M-.8-.8H.8V.8H-.8ZM-.8 .8L.8-.8',
  'not planted': 'M-.8 0A.8 .8 0 1 0 .8 0A.8 .8 0 1 0-.8 0Z',
};

/** A mark centred at x, y with the given half width in px; its stroke keeps its own width. */
export function statusMark(status: MarkedStatus, x: number, y: number, half: number): string {
  return element('path', {
    class: 'mark',
    'data-status': status,
    d: shapes[status],
    'vector-effect': 'non-scaling-stroke',
    transform: `translate(${String(round(x))} ${String(round(y))}) scale(${String(round(half))})`,
  });
}
