import type { Trial } from '../model/trial.ts';

/** Orders trials by the last day that each knows, then by id, so that the order never depends on the disk. */
export function newestFirst(a: Trial, b: Trial): number {
  return compareText(lastDay(b), lastDay(a)) || compareText(a.id, b.id);
}

function lastDay({ metadata }: Trial): string {
  const { cuts, transplanted, germinated, sown } = metadata.dates ?? {};
  return cuts?.at(-1) ?? transplanted ?? germinated ?? sown ?? String(metadata.season.year);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
