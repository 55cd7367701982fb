import type { CreditedPerson } from './credited-people.ts';
import type { CsvResource } from './csv-resources.ts';
import type { Dataset } from './dataset.ts';
import { fileFacts } from './file-facts.ts';

const profiles = 'https://datapackage.org/profiles/2.0';

const contributor = ({ name, parts, orcid, email }: CreditedPerson): object => ({
  title: name.full,
  ...(name.given === null ? {} : { givenName: name.given, familyName: name.family }),
  ...(orcid === null ? {} : { path: orcid }),
  ...(email === null ? {} : { email }),
  roles: parts,
});

/** A table's schema in Table Schema's vocabulary. */
export function tableSchema(csv: Omit<CsvResource, 'file' | 'name'>): object {
  return {
    $schema: `${profiles}/tableschema.json`,
    fields: csv.fields.map((field) =>
      csv.decimal === '.' || field.type !== 'number' ? field : { ...field, decimalChar: csv.decimal },
    ),
    missingValues: csv.missingValues,
    ...(csv.primaryKey.length === 0 ? {} : { primaryKey: csv.primaryKey }),
    ...(csv.foreignKeys.length === 0 ? {} : { foreignKeys: csv.foreignKeys }),
  };
}

/** One CSV file as a resource of a data package. */
export function tableResource(csv: Omit<CsvResource, 'name'> & { name: string }, path: string): object {
  const { bytes, sha256 } = fileFacts(csv.file);
  return {
    name: csv.name,
    type: 'table',
    title: csv.title,
    description: csv.description,
    path,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    bytes,
    hash: `sha256:${sha256}`,
    dialect: { $schema: `${profiles}/tabledialect.json`, delimiter: csv.delimiter },
    schema: tableSchema(csv),
  };
}

/** datapackage.json: the dataset and its CSV files as Data Package 2.0. */
export function dataPackage(set: Dataset, resources: readonly CsvResource[]): object {
  return {
    $schema: `${profiles}/datapackage.json`,
    name: set.id,
    id: set.identifier,
    title: set.title,
    description: set.description,
    homepage: set.page,
    version: set.version,
    created: `${set.created}T00:00:00Z`,
    keywords: set.keywords,
    licenses: [{ name: set.licence.id, title: set.licence.name, path: set.licence.address }],
    contributors: [...set.creators, ...set.contributors].map(contributor),
    sources: [
      { title: "The grower's own weights, harvest.csv", path: `${set.dataPage}harvest.csv` },
      ...set.related.map((work) => ({ title: work.note ?? work.value, path: work.address })),
    ],
    resources: resources.map((csv) => tableResource(csv, csv.file.name)),
  };
}
