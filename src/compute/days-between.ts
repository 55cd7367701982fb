const millisecondsOfDay = 86_400_000;

/** Whole days from one ISO 8601 date to another, reckoned in UTC so that no clock change matters. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / millisecondsOfDay);
}
