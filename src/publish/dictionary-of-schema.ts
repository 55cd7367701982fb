import type { DictionaryField } from './dictionary.ts';

/** What is read of a JSON Schema. */
interface Schema {
  type?: string | readonly string[];
  description?: string;
  examples?: readonly unknown[];
  required?: readonly string[];
  properties?: Readonly<Record<string, Schema>>;
  additionalProperties?: boolean | Schema;
  items?: Schema | boolean;
  anyOf?: readonly Schema[];
  enum?: readonly unknown[];
  const?: unknown;
  format?: string;
  minimum?: number;
  maximum?: number;
  $ref?: string;
  $defs?: Readonly<Record<string, Schema>>;
}

/** What the walk knows: the shared definitions, and where each was first written out. */
interface Known {
  definitions: Readonly<Record<string, Schema>>;
  writtenOutAt: Map<string, string>;
}

/**
 * Every key that a JSON Schema describes, as a path: `crop.name`, `people[].part` (of each item of a list),
 * `nutrients.water.<name>` (of each key of a map). A group that is described once under `$defs` and used in
 * several places is written out in the first, and referred to in the others.
 */
export function fieldsOfSchema(root: object): DictionaryField[] {
  const schema: Schema = root;
  return below(schema, '', { definitions: schema.$defs ?? {}, writtenOutAt: new Map() });
}

/** The fields inside a group, a list or a map that stands at the path. */
function below(schema: Schema, path: string, known: Known): DictionaryField[] {
  const fields: DictionaryField[] = [];
  for (const [name, property] of Object.entries(schema.properties ?? {})) {
    fields.push(
      ...fieldAt(property, path === '' ? name : `${path}.${name}`, schema.required?.includes(name), known),
    );
  }
  for (const [inner, suffix] of [
    [schema.items, '[]'],
    [schema.additionalProperties, '.<name>'],
  ] as const) {
    if (typeof inner === 'object') fields.push(...once(inner, path + suffix, known).fields);
  }
  return fields;
}

function fieldAt(given: Schema, path: string, needed = false, known: Known): DictionaryField[] {
  const schema = resolved(given, known.definitions);
  const items = typeof schema.items === 'object' ? referenceOf(schema.items) : undefined;
  const itemsBefore = items === undefined ? undefined : known.writtenOutAt.get(items);
  const { fields, as = itemsBefore } = once(given, path, known);
  const nullable = given.anyOf?.some((each) => each.type === 'null') ? ' or null' : '';
  const example = schema.examples?.[0];
  const own: DictionaryField = {
    name: path,
    kind:
      kindOf(schema) +
      nullable +
      (as === undefined ? '' : `, ${as === itemsBefore ? 'each ' : ''}with the keys of ${as}`),
    needed,
    meaning: schema.description ?? '',
    example: example === undefined || typeof example === 'object' ? '' : JSON.stringify(example),
  };
  return [own, ...fields];
}

/** What stands inside, unless a shared definition was written out before: then where that was. */
function once(given: Schema, path: string, known: Known): { fields: DictionaryField[]; as?: string } {
  const name = referenceOf(given);
  const schema = resolved(given, known.definitions);
  const before = name === undefined ? undefined : known.writtenOutAt.get(name);
  if (before !== undefined && schema.properties) return { fields: [], as: before };
  if (name !== undefined) known.writtenOutAt.set(name, path);
  return { fields: below(schema, path, known) };
}

function referenceOf(schema: Schema): string | undefined {
  return schema.$ref ?? schema.anyOf?.find((each) => each.$ref !== undefined)?.$ref;
}

/** Follows a reference, and takes the described one of `anyOf: [it, null]`. */
function resolved(schema: Schema, definitions: Record<string, Schema>): Schema {
  const name = schema.$ref?.replace('#/$defs/', '');
  if (name !== undefined) return { ...resolved(definitions[name] ?? {}, definitions), ...described(schema) };
  const some = schema.anyOf?.find((each) => each.type !== 'null');
  return some ? { ...resolved(some, definitions), ...described(schema) } : schema;
}

function described({ description, examples }: Schema): Schema {
  return { ...(description && { description }), ...(examples && { examples }) };
}

const words: Readonly<Record<string, string>> = {
  string: 'text',
  object: 'group',
  array: 'list',
  boolean: 'true or false',
  integer: 'whole number',
};

function kindOf(schema: Schema): string {
  if (schema.enum) return `one of: ${schema.enum.map((value) => JSON.stringify(value)).join(', ')}`;
  if (schema.const !== undefined) return JSON.stringify(schema.const);
  if (schema.format === 'date') return 'date, year-month-day';
  if (schema.format === 'uri') return 'web address';
  const types = [schema.type ?? 'value'].flat().map((type) => words[type] ?? type);
  return types.join(' or ') + range(schema);
}

function range({ minimum, maximum }: Schema): string {
  if (minimum !== undefined && maximum !== undefined) return `, ${minimum} to ${maximum}`;
  if (minimum !== undefined) return `, at least ${minimum}`;
  return maximum === undefined ? '' : `, at most ${maximum}`;
}
