import cultivarsSchema from '../../schemas/cultivars.schema.json' with { type: 'json' };
import sheetSchema from '../../schemas/sheet.schema.json' with { type: 'json' };
import siteSchema from '../../schemas/site.schema.json' with { type: 'json' };
import trialSchema from '../../schemas/trial.schema.json' with { type: 'json' };
import type { Path } from '../read/yaml.ts';
import type { SchemaName } from './validator.ts';

/** As much of a JSON Schema as the messages need. */
export interface Schema {
  $ref?: string;
  type?: string;
  pattern?: string;
  format?: string;
  description?: string;
  examples?: unknown[];
  properties?: Record<string, Schema>;
  additionalProperties?: boolean | Schema;
  items?: Schema;
  enum?: unknown[];
  const?: unknown;
  $defs?: Record<string, Schema>;
}

export const roots: Readonly<Record<SchemaName, Schema>> = {
  trial: trialSchema as Schema,
  site: siteSchema as Schema,
  cultivars: cultivarsSchema as Schema,
  sheet: sheetSchema as Schema,
};

/** A schema with what its `$ref` refers to behind its own words. */
function resolved(root: Schema, schema: Schema): Schema {
  const name = schema.$ref?.split('/').at(-1);
  const target = name === undefined ? undefined : root.$defs?.[name];
  return target === undefined ? schema : { ...target, ...schema };
}

/** The part of a schema that describes the value at a path, or null where the schema knows no such value. */
export function schemaAt(name: SchemaName, path: Path): Schema | null {
  const root = roots[name];
  let schema: Schema = root;
  for (const step of path) {
    const key = String(step);
    const free = typeof schema.additionalProperties === 'object' ? schema.additionalProperties : undefined;
    const properties = schema.properties ?? {};
    const next = schema.items ?? (Object.hasOwn(properties, key) ? properties[key] : free);
    if (next === undefined) return null;
    schema = resolved(root, next);
  }
  return schema;
}

/** Where in a schema a key may stand, as `dates.cuts`; the first place found, or null. */
export function homeOfKey(name: SchemaName, key: string): string | null {
  const root = roots[name];
  const search = (schema: Schema, path: string): string | null => {
    const full = resolved(root, schema);
    for (const [property, inner] of Object.entries(full.properties ?? {})) {
      const here = path === '' ? property : `${path}.${property}`;
      if (property === key && path !== '') return here;
      const found = search(inner, here);
      if (found !== null) return found;
    }
    return full.items === undefined ? null : search(full.items, `${path}[]`);
  };
  return search(root, '');
}
