import type { CsvResource } from './csv-resources.ts';
import type { Dataset } from './dataset.ts';
import type { Field } from './table-schema.ts';
import { unitCodes } from './unit-codes.ts';

/** A datatype of CSV on the Web. Its `number` reads as a double, so exponents are allowed. */
function datatype(field: Field, decimal: string): string | object {
  if (field.type === 'date') return { base: 'date', format: 'yyyy-MM-dd' };
  if (field.type === 'string') {
    const allowed = field.constraints?.enum;
    return allowed === undefined ? 'string' : { base: 'string', format: allowed.map(literally).join('|') };
  }
  const { minimum, maximum } = field.constraints ?? {};
  return {
    base: field.type === 'integer' ? 'integer' : 'number',
    ...(minimum === undefined ? {} : { minimum }),
    ...(maximum === undefined ? {} : { maximum }),
    ...(decimal === '.' || field.type === 'integer' ? {} : { format: { decimalChar: decimal } }),
  };
}

/** The text as a regular expression that matches it alone: what `format` of a string is. */
const literally = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|/-]/g, '\\$&');

/** A column's name may hold letters, digits, `_` and `.`; anything else is percent-encoded. */
const columnName = (name: string): string =>
  encodeURIComponent(name).replace(
    /[!'()*~-]/g,
    (mark) => `%${mark.charCodeAt(0).toString(16).toUpperCase()}`,
  );

function column(field: Field, decimal: string, key: readonly string[]): object {
  const unit = field.unit === undefined ? null : unitCodes(field.unit);
  return {
    name: columnName(field.name),
    titles: field.name,
    'dc:title': field.title ?? field.name,
    'dc:description': field.description,
    datatype: datatype(field, decimal),
    ...(field.constraints?.required === true || key.includes(field.name) ? { required: true } : {}),
    ...(field.rdfType === undefined ? {} : { 'dc:subject': { '@id': field.rdfType } }),
    ...(unit === null ? {} : { 'schema:unitText': unit.ucum }),
    ...(typeof unit?.unece === 'string' ? { 'schema:unitCode': unit.unece } : {}),
  };
}

/** What beside the columns a CSV file's metadata says. */
export type CsvwAbout = Pick<Dataset, 'title' | 'language' | 'licence' | 'publisher'> &
  Partial<Pick<Dataset, 'version' | 'released'>> & { creators: readonly string[] };

/** `<file>.csv-metadata.json`: CSV on the Web metadata of one CSV file, which lies beside it. */
export function csvwMetadata(about: CsvwAbout, url: string, csv: Omit<CsvResource, 'file' | 'name'>): object {
  return {
    '@context': ['http://www.w3.org/ns/csvw', { '@language': about.language }],
    url,
    'dc:title': `${about.title}: ${csv.title}`,
    'dc:description': csv.description,
    ...(about.creators.length === 0 ? {} : { 'dc:creator': about.creators }),
    'dc:publisher': about.publisher,
    'dc:license': { '@id': about.licence.address },
    ...(about.released === undefined ? {} : { 'dc:issued': about.released }),
    ...(about.version === undefined ? {} : { 'schema:version': about.version }),
    dialect: { header: true, encoding: 'utf-8', delimiter: csv.delimiter },
    tableSchema: {
      columns: csv.fields.map((field) => column(field, csv.decimal, csv.primaryKey)),
      ...(csv.primaryKey.length === 0 ? {} : { primaryKey: csv.primaryKey.map(columnName) }),
    },
  };
}
