/** Published standards, read in place; a machine without them skips what needs them, by name. */
import { existsSync, readFileSync } from 'node:fs';

const folder = new URL('../../../shared/standards/', import.meta.url);

/** True where the standards lie beside the project. */
export const standardsAreHere = existsSync(folder);

/** A file of a standard as text. */
export const standardText = (path: string): string => readFileSync(new URL(path, folder), 'utf8');

/** A file of a standard as JSON. */
export const standardJson = (path: string): unknown => JSON.parse(standardText(path));
