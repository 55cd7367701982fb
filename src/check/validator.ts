import { Ajv2020, type ErrorObject, type ValidateFunction } from 'ajv/dist/2020.js';
import cultivarsSchema from '../../schemas/cultivars.schema.json' with { type: 'json' };
import siteSchema from '../../schemas/site.schema.json' with { type: 'json' };
import trialSchema from '../../schemas/trial.schema.json' with { type: 'json' };
import { isDate } from './date.ts';

const ajv = new Ajv2020({
  allErrors: true,
  verbose: true,
  strict: true,
  strictRequired: false,
  strictTypes: false,
  formats: { date: isDate, uri: isAddress },
});

/** An absolute address without a user's name in it. */
function isAddress(text: string): boolean {
  if (/[\s<>"{}|\\^`]/.test(text)) return false;
  const address = URL.parse(text);
  return address !== null && address.username === '' && address.password === '';
}

const compiled = new Map<string, ValidateFunction>();
const schemas = { trial: trialSchema, site: siteSchema, cultivars: cultivarsSchema } as const;

export type SchemaName = keyof typeof schemas;

/** All that a schema refuses in a value; each schema is compiled once. */
export function validate(name: SchemaName, value: unknown): ErrorObject[] {
  let validator = compiled.get(name);
  if (validator === undefined) {
    validator = ajv.compile(schemas[name]);
    compiled.set(name, validator);
  }
  return validator(value) ? [] : [...(validator.errors ?? [])];
}
