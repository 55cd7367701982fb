import { say, sayCount } from '../model/say.ts';
import type { SchemaError } from './validator.ts';

/** Every pattern of the schemas, in words, which are said where they are used. */
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

/** What a schema asks of a value's form, to be said after "must be". */
export function formInWords({ keyword, params }: SchemaError): string {
  const form = String(params['pattern']);
  const limit = Number(params['limit']);
  switch (keyword) {
    case 'pattern':
      return say(patternWords[form] ?? 'of the form {form}', { form });
    case 'minLength':
      return sayCount(limit, 'at least {count} character long', 'at least {count} characters long');
    case 'maxLength':
      return sayCount(limit, 'at most {count} character long', 'at most {count} characters long');
    case 'minItems':
      return sayCount(limit, 'a list of at least {count} entry', 'a list of at least {count} entries');
    case 'maxItems':
      return sayCount(limit, 'a list of at most {count} entry', 'a list of at most {count} entries');
    case 'minProperties':
      return sayCount(limit, 'a mapping of at least {count} entry', 'a mapping of at least {count} entries');
    case 'minimum':
      return say('at least {limit}', { limit });
    case 'maximum':
      return say('at most {limit}', { limit });
    case 'exclusiveMinimum':
      return say('more than {limit}', { limit });
    case 'format':
      return say('an address such as https://example.org/trials/');
    default:
      return say('of another form');
  }
}
