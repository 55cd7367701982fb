import type { Status } from '../model/trial.ts';

/** What may become of a plant at a cut. */
export const statuses: readonly Status[] = [
  'weighed',
  'not weighed',
  'dead',
  'no regrowth',
  'culled',
  'not planted',
];

const byText: ReadonlyMap<string, Status> = new Map(statuses.map((status) => [status, status]));

/** The status of a cell's text, weighed where it is empty; null for another text. */
export function statusOf(text: string): Status | null {
  return text === '' ? 'weighed' : (byText.get(text) ?? null);
}
