import { expect, test } from 'vitest';
import schema from '../../schemas/trial.schema.json' with { type: 'json' };
import { bare, full, scored } from './example.ts';

interface Part {
  $ref?: string;
  required?: string[];
  properties?: Record<string, Part>;
  items?: Part;
}

const definitions = schema.$defs as Record<string, Part>;

const resolved = (part: Part): Part =>
  part.$ref === undefined ? part : { ...definitions[part.$ref.replace('#/$defs/', '')], ...part };

/** The keys that a schema knows and no value given has: `containers.volume.value`. */
function unused(given: Part, values: readonly unknown[], path: string): string[] {
  const part = resolved(given);
  if (part.items) {
    const items = values.flatMap((value) => (Array.isArray(value) ? (value as unknown[]) : []));
    return unused(part.items, items, path);
  }
  return Object.entries(part.properties ?? {}).flatMap(([key, inner]) => {
    const own = values.flatMap((value) => {
      const found = (value as Record<string, unknown> | null)?.[key];
      return found === undefined ? [] : [found];
    });
    const name = path === '' ? key : `${path}.${key}`;
    return own.length === 0 ? [name] : unused(inner, own, name);
  });
}

test('the trials that say everything use every field of the schema', () => {
  const given = [full, scored].map(({ trial }) => trial.metadata);
  // How a grower's own columns are read is held against its own tables in data-package.test.ts.
  expect(unused(schema as unknown as Part, given, '').filter((key) => key !== 'harvest')).toEqual([]);
});

test('the trial that says no more than it must has no field that a finished and released trial can do without', () => {
  const optional = Object.keys(schema.properties).filter((key) => !schema.required.includes(key));
  expect(optional.filter((key) => key in bare.trial.metadata)).toEqual(['dates', 'releases']);
});
