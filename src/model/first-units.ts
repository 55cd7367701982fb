/** The units that a site shows first. */
export type FirstUnits = 'metric' | 'us';

/** Kept like the language that is being written, and for the same reason. */
const key = Symbol.for('tankside:first-units');
const kept = globalThis as unknown as Record<symbol, FirstUnits | undefined>;

/** The units that the site shows first: those set, else those of the page in a browser, else metric ones. */
export function firstUnits(): FirstUnits {
  return (kept[key] ??= globalThis.document?.documentElement.dataset['first'] === 'us' ? 'us' : 'metric');
}

/** Sets the units of the site: once, before anything is drawn. */
export function showFirst(units: FirstUnits): void {
  kept[key] = units;
}
