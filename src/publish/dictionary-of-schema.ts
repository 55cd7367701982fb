import { say } from '../model/say.ts';
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
  const isNullable = given.anyOf?.some((each) => each.type === 'null') === true;
  const example = schema.examples?.[0];
  const own: DictionaryField = {
    name: path,
    kind: [
      isNullable ? say('{kind} or null', { kind: kindOf(schema) }) : kindOf(schema),
      ...(as === undefined ? [] : [asBefore(as, as === itemsBefore)]),
    ].join(', '),
    needed,
    meaning: say(schema.description ?? ''),
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

const asBefore = (path: string, isEach: boolean): string =>
  isEach ? say('each with the keys of {path}', { path }) : say('with the keys of {path}', { path });

const words: Readonly<Record<string, string>> = {
  string: 'text',
  object: 'group',
  array: 'list',
  boolean: 'true or false',
  integer: 'whole number',
};

function kindOf(schema: Schema): string {
  if (schema.enum)
    return say('one of: {choices}', {
      choices: schema.enum.map((value) => JSON.stringify(value)).join(', '),
    });
  if (schema.const !== undefined) return JSON.stringify(schema.const);
  if (schema.format === 'date') return say('date, year-month-day');
  if (schema.format === 'uri') return say('web address');
  const types = [schema.type ?? 'value'].flat().map((type) => say(words[type] ?? type));
  const kind = types.slice(1).reduce((one, other) => say('{one} or {other}', { one, other }), types[0] ?? '');
  const limits = range(schema);
  return limits === null ? kind : `${kind}, ${limits}`;
}

function range({ minimum, maximum }: Schema): string | null {
  if (minimum !== undefined && maximum !== undefined)
    return say('{minimum} to {maximum}', { minimum, maximum });
  if (minimum !== undefined) return say('at least {limit}', { limit: minimum });
  return maximum === undefined ? null : say('at most {limit}', { limit: maximum });
}
