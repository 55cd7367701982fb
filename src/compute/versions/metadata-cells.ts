import type { TrialMetadata } from '../../model/trial.ts';

/** One value of trial.yaml, with the entry that it stands in and its key there. */
export interface MetadataCell {
  row: string;
  column: string;
  value: string;
}

/** What every release changes by itself. */
const ofTheRelease = ['version', 'releases'];

/**
 * Every value of a trial.yaml but its version and releases, by a key that stays the same where entries of a list
 * change places: entries are known by their id, name, file, or rule and place.
 */
export function metadataCells(metadata: TrialMetadata): Map<string, MetadataCell> {
  const cells = new Map<string, MetadataCell>();
  for (const [key, value] of Object.entries(metadata)) {
    if (!ofTheRelease.includes(key)) add(cells, key, [], value);
  }
  return cells;
}

function add(cells: Map<string, MetadataCell>, row: string, path: readonly string[], value: unknown): void {
  if (value === undefined) return;
  if (Array.isArray(value) && value.some(isMapping)) {
    const seen = new Map<string, number>();
    for (const item of value as unknown[]) {
      const name = nameOf(item);
      const count = (seen.get(name) ?? 0) + 1;
      seen.set(name, count);
      const entry = count === 1 ? name : `${name} (${String(count)})`;
      add(cells, [row, ...path, entry].join(' '), [], item);
    }
  } else if (isMapping(value)) {
    for (const [key, inner] of Object.entries(value)) add(cells, row, [...path, key], inner);
  } else {
    const column = path.join('.');
    const text = Array.isArray(value) ? value.map(String).join(', ') : String(value);
    cells.set(`${row}\0${column}`, { row, column, value: text });
  }
}

function isMapping(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function nameOf(item: unknown): string {
  if (!isMapping(item)) return String(item);
  const own = item['id'] ?? item['name'] ?? item['file'] ?? item['value'];
  if (typeof own === 'string') return own;
  return ['rule', 'date', 'where']
    .map((key) => item[key])
    .filter((part) => typeof part === 'string')
    .join(', ');
}
