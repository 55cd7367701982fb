import type { Path } from '../read/yaml.ts';
import { pathOf, valueAt } from './json-pointer.ts';
import { meantKey } from './meant-key.ts';
import { schemaAt } from './schema-at.ts';
import { validate, type SchemaName } from './validator.ts';

/** A value without what its schema refuses. */
export interface SoundPart {
  value: Record<string, unknown>;
  /**
   * Keys of the top level that are absent, or of which an entry was left out; and what was left out, as
   * `containers.block`.
   */
  lost: ReadonlySet<string>;
  /** The path in the file of a path in `value`: entries left out shift those that follow. */
  original(path: Path): Path;
}

/** Reading the mapping again after each removal ends at the latest when nothing is left. */
const mostRounds = 50;

const removed = Symbol('removed');

/** Takes out of a mapping whatever its schema refuses, and with it whatever cannot stand without it. */
export function soundPart(schema: SchemaName, given: Record<string, unknown>): SoundPart {
  const value = structuredClone(given);
  const lost = new Set<string>();
  const origins = new WeakMap<unknown[], number[]>();
  const renamed = renameMisspelt(schema, value);
  for (let round = 0; round < mostRounds; round += 1) {
    const errors = validate(schema, value).filter(({ schemaPath }) => !/\/(then|if)(\/|$)/.test(schemaPath));
    let isChanged = false;
    const arrays = new Set<unknown[]>();
    for (const { keyword, instancePath, params } of errors) {
      const path = pathOf(instancePath);
      if (keyword === 'additionalProperties') path.push(String(params['additionalProperty']));
      else if (path.length === 0) {
        if (keyword === 'required') lost.add(String(params['missingProperty']));
        continue;
      }
      // Said without the numbers of entries: containers.block.
      if (keyword !== 'additionalProperties') lost.add(path.filter((step) => !/^\d+$/.test(step)).join('.'));
      const parent = valueAt(value, path.slice(0, -1));
      const key = path.at(-1) ?? '';
      isChanged = true;
      if (Array.isArray(parent)) {
        parent[Number(key)] = removed;
        arrays.add(parent);
        lost.add(path[0] ?? '');
      } else if (typeof parent === 'object' && parent !== null) {
        Reflect.deleteProperty(parent, key);
        if ((path.length === 1 && keyword !== 'additionalProperties') || path[0] === 'harvest')
          lost.add(path[0] ?? '');
      }
    }
    for (const array of arrays) closeGaps(array, origins);
    if (!isChanged) break;
  }
  return { value, lost, original: (path) => originalPath(value, path, origins, renamed) };
}

/** By the mapping: the key in the file of a key that was misspelt there. */
type Renamed = WeakMap<object, Map<string, string>>;

/** Gives misspelt keys the names that they are told to be slips of, so that nothing seems to be absent for them. */
function renameMisspelt(schema: SchemaName, value: Record<string, unknown>): Renamed {
  const renamed: Renamed = new WeakMap();
  for (const { keyword, instancePath, params } of validate(schema, value)) {
    if (keyword !== 'additionalProperties') continue;
    const path = pathOf(instancePath);
    const key = String(params['additionalProperty']);
    const parent = valueAt(value, path);
    if (typeof parent !== 'object' || parent === null || Array.isArray(parent)) continue;
    const known = Object.keys(schemaAt(schema, path)?.properties ?? {});
    const best = meantKey(key, known);
    if (best === null || Object.hasOwn(parent, best)) continue;
    const own = parent as Record<string, unknown>;
    own[best] = own[key];
    Reflect.deleteProperty(own, key);
    renamed.set(parent, (renamed.get(parent) ?? new Map<string, string>()).set(best, key));
  }
  return renamed;
}

function closeGaps(array: unknown[], origins: WeakMap<unknown[], number[]>): void {
  const before = origins.get(array) ?? array.map((_, index) => index);
  const kept = array.flatMap((item, index) => (item === removed ? [] : [index]));
  const items = kept.map((index) => array[index]);
  origins.set(
    array,
    kept.map((index) => before[index] ?? index),
  );
  array.splice(0, array.length, ...items);
}

function originalPath(
  value: unknown,
  path: Path,
  origins: WeakMap<unknown[], number[]>,
  renamed: Renamed,
): Path {
  return path.map((step, depth) => {
    const parent = valueAt(value, path.slice(0, depth));
    if (Array.isArray(parent)) return origins.get(parent)?.[Number(step)] ?? step;
    const own = typeof parent === 'object' && parent !== null ? renamed.get(parent) : undefined;
    return own?.get(String(step)) ?? step;
  });
}
