const millisecondsInDay = 86_400_000;

/** Whole days from one day to another, both year-month-day. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / millisecondsInDay);
}
