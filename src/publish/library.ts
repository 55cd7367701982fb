import type { Library } from '../model/library.ts';

/**
 * Where the pages find the library. The command that builds or serves the site provides it before Astro
 * starts; the pages run in the same process but from a bundle of their own, so a module's variable would
 * not be shared, and a registered symbol is.
 */
const key = Symbol.for('tankside.library');
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
