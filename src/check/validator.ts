import * as validators from './generated/validators.mjs';
import { pathOf, valueAt } from './json-pointer.ts';

export type SchemaName = keyof typeof validators;

/** One thing that a schema refuses in a value. */
export interface SchemaError {
  /** The keyword that refused it, and what that keyword asks for. */
  keyword: string;
  params: Record<string, unknown>;
  /** JSON pointers to the value, and to the keyword in the schema. */
  instancePath: string;
  schemaPath: string;
  /** The value itself. */
  data: unknown;
  /** The key that was refused, where a key was and not its value. */
  propertyName?: string;
}

/**
 * All that a schema refuses in a value. The validators are compiled beforehand, by `npm run generate`: a page's
 * policy lets no text become code, and a command starts sooner without a compiler.
 */
export function validate(name: SchemaName, value: unknown): SchemaError[] {
  const validator = validators[name];
  if (validator(value)) return [];
  return (validator.errors ?? []).map((error) => ({
    ...error,
    data: valueAt(value, pathOf(error.instancePath)),
  }));
}
