import type { Library, TrialWithFindings } from '../model/library.ts';
import { say } from '../model/say.ts';
import { madeOnce } from './made-once.ts';
import type { Photograph } from './photographs.ts';

/**
 * Where the pages find the library. The command that builds or serves the site provides it before Astro
 * starts; the pages run in the same process but from a bundle of their own, so a module's variable would
 * not be shared, and a registered symbol is.
 */
const key = Symbol.for('tankside:library');
const shelf = globalThis as unknown as Record<symbol, (() => Promise<Library>) | undefined>;

/** Sets where the pages find the library. */
export function provideLibrary(load: () => Promise<Library>): void {
  shelf[key] = load;
}

/** The library that was provided. Throws where none was: pages are built by `npm run build` or `npm run dev`. */
export async function library(): Promise<Library> {
  const load = shelf[key];
  if (load === undefined)
    throw new Error('library was not provided: build with `npm run build` or `npm run dev`');
  return await load();
}

const byId = madeOnce(
  'trials-by-id',
  ({ trials }: Library) => new Map(trials.map((item) => [item.trial.id, item])),
);

/** The trial that a page is of, by the id in its address. */
export function trialOfPage(library: Library, id: string | undefined): TrialWithFindings {
  const item = byId(library).get(id ?? '');
  if (item === undefined) throw new Error(`no trial ${String(id)}`);
  return item;
}

const photographsKey = Symbol.for('tankside.photographs');
const album = globalThis as unknown as Record<symbol, ReadonlyMap<string, readonly Photograph[]> | undefined>;

/** Sets the photographs that are published, by the trial's id. */
export function providePhotographs(photographs: ReadonlyMap<string, readonly Photograph[]>): void {
  album[photographsKey] = photographs;
}

/** The published photographs of a trial. */
export function publishedPhotographs(trial: string): readonly Photograph[] {
  return album[photographsKey]?.get(trial) ?? [];
}

const searchKey = Symbol.for('tankside.search');
const desk = globalThis as unknown as Record<symbol, string | null | undefined>;

/** Says that the site has a search (null), or why it has none. */
export function provideSearch(missing: string | null): void {
  desk[searchKey] = missing;
}

/** Why the site has no search, in a sentence; null where it has one. */
export function searchMissing(): string | null {
  const missing = desk[searchKey];
  return missing === undefined
    ? say('The search is made by the build; there is none in this preview.')
    : missing;
}
