import { say, sayCount } from '../model/say.ts';
import type { SchemaError } from './validator.ts';

/** Every pattern of the schemas, in words. */
export const patternWords: Readonly<Record<string, () => string>> = {
  '^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$': () => say('three numbers with points between'),
  '^-?[0-9]{1,3}$': () => say('a whole number of at most three digits'),
  '^[^@\\s<>",;]+@[^@\\s<>",;]+\\.[^@\\s<>",;]+$': () => say('an e-mail address such as imke@example.org'),
  '^NCBITaxon:[1-9][0-9]*$': () => say('NCBITaxon: and a number'),
  '^[A-Z]{2}$': () => say('two capital letters, the country code of ISO 3166'),
  '^(https://orcid\\.org/)?[0-9]{4}-[0-9]{4}-[0-9]{4}-[0-9]{3}[0-9X]$': () =>
    say('four groups of four digits'),
  '^[A-Za-z][A-Za-z0-9_]{0,39}$': () => say('letters, digits and underscores, a letter first, at most 40'),
  '^[^\\s,;"](.*[^\\s,;"])?$': () => say('a name without a space, comma, semicolon or quote at its ends'),
  '^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$': () =>
    say('letters and digits, with spaces, points, hyphens or underscores between, at most 32'),
  '^TO:[0-9]{7}$': () => say('TO: and seven digits'),
  '^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$': () => say('lower-case letters, digits and hyphens, 2 to 64'),
  '^source/[^/\\\\]+$': () => say('a file under source/, such as source/weights.xlsx'),
  '^[0-9a-f]{64}$': () => say('a SHA-256 sum: 64 digits and letters from a to f'),
  '^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$': () =>
    say('a row, such as 3, or rows, such as 3-4'),
  '^(?:[1-9][0-9]*|[A-Z]{1,3})$': () => say('a column, such as D, or a row, such as 12'),
  '^[1-9][0-9]*$': () => say('a whole number from 1'),
  '^https?://': () => say('an address that begins with http:// or https://'),
  '^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$': () => say('a language tag such as en or en-IE'),
};

/** What a schema asks of a value's form, by its keyword. */
const formWords: Readonly<Record<string, (limit: number) => string>> = {
  minLength: (limit) =>
    sayCount(limit, 'at least {count} character long', 'at least {count} characters long'),
  maxLength: (limit) => sayCount(limit, 'at most {count} character long', 'at most {count} characters long'),
  minItems: (limit) =>
    sayCount(limit, 'a list of at least {count} entry', 'a list of at least {count} entries'),
  maxItems: (limit) =>
    sayCount(limit, 'a list of at most {count} entry', 'a list of at most {count} entries'),
  minProperties: (limit) =>
    sayCount(limit, 'a mapping of at least {count} entry', 'a mapping of at least {count} entries'),
  minimum: (limit) => say('at least {limit}', { limit }),
  maximum: (limit) => say('at most {limit}', { limit }),
  exclusiveMinimum: (limit) => say('more than {limit}', { limit }),
  format: () => say('an address such as https://example.org/trials/'),
};

/** What a schema asks of a value's form, to be said after "must be". */
export function formInWords({ keyword, params }: SchemaError): string {
  const form = String(params['pattern']);
  if (keyword === 'pattern') return patternWords[form]?.() ?? say('of the form {form}', { form });
  return formWords[keyword]?.(Number(params['limit'])) ?? say('of another form');
}
