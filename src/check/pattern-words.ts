import type { SchemaError } from './validator.ts';

/** Every pattern of the schemas, in words. */
export const patternWords: Readonly<Record<string, string>> = {
  '^(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)\\.(0|[1-9][0-9]*)$': 'three numbers with points between',
  '^-?[0-9]{1,3}$': 'a whole number of at most three digits',
  '^[^@\\s<>",;]+@[^@\\s<>",;]+\\.[^@\\s<>",;]+$': 'an e-mail address such as imke@example.org',
  '^NCBITaxon:[1-9][0-9]*$': 'NCBITaxon: and a number',
  '^[A-Z]{2}$': 'two capital letters, the country code of ISO 3166',
  '^(https://orcid\\.org/)?[0-9]{4}-[0-9]{4}-[0-9]{4}-[0-9]{3}[0-9X]$': 'four groups of four digits',
  '^[A-Za-z][A-Za-z0-9_]{0,39}$': 'letters, digits and underscores, a letter first, at most 40',
  '^[^\\s,;"](.*[^\\s,;"])?$': 'a name without a space, comma, semicolon or quote at its ends',
  '^[A-Za-z0-9](?:[A-Za-z0-9 ._-]{0,30}[A-Za-z0-9])?$':
    'letters and digits, with spaces, points, hyphens or underscores between, at most 32',
  '^TO:[0-9]{7}$': 'TO: and seven digits',
  '^[a-z0-9][a-z0-9-]{0,62}[a-z0-9]$': 'lower-case letters, digits and hyphens, 2 to 64',
  '^source/[^/\\\\]+$': 'a file under source/, such as source/weights.xlsx',
  '^[0-9a-f]{64}$': 'a SHA-256 sum: 64 digits and letters from a to f',
  '^(?:[1-9][0-9]*(?:-[1-9][0-9]*)?|[A-Z]{1,3}(?:-[A-Z]{1,3})?)$': 'a row, such as 3, or rows, such as 3-4',
  '^(?:[1-9][0-9]*|[A-Z]{1,3})$': 'a column, such as D, or a row, such as 12',
  '^[1-9][0-9]*$': 'a whole number from 1',
  '^https?://': 'an address that begins with http:// or https://',
  '^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$': 'a language tag such as en or en-IE',
};

const characters = (count: unknown): string => `${String(count)} character${count === 1 ? '' : 's'}`;
const entries = (count: unknown): string => `${String(count)} entr${count === 1 ? 'y' : 'ies'}`;

/** What a schema asks of a value's form, to be said after "must be". */
export function formInWords({ keyword, params }: SchemaError): string {
  const limit: unknown = params['limit'];
  const words: Readonly<Record<string, string>> = {
    pattern: patternWords[String(params['pattern'])] ?? `of the form ${String(params['pattern'])}`,
    minLength: `at least ${characters(limit)} long`,
    maxLength: `at most ${characters(limit)} long`,
    minItems: `a list of at least ${entries(limit)}`,
    maxItems: `a list of at most ${entries(limit)}`,
    minProperties: `a mapping of at least ${entries(limit)}`,
    minimum: `at least ${String(limit)}`,
    maximum: `at most ${String(limit)}`,
    exclusiveMinimum: `more than ${String(limit)}`,
    format: 'an address such as https://example.org/trials/',
  };
  return words[keyword] ?? 'of another form';
}
