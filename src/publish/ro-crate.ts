import type { CreditedPerson } from './credited-people.ts';
import type { Dataset } from './dataset.ts';
import type { DatasetVariable } from './dataset-variables.ts';
import { placeInWords } from './described-in-words.ts';
import { fileFacts } from './file-facts.ts';
import type { PublishedFile } from './published-file.ts';

type Entity = Readonly<Record<string, unknown>> & { '@id': string };

const reference = ({ '@id': id }: Entity): object => ({ '@id': id });

const personEntity = ({ name, orcid, email }: CreditedPerson, index: number): Entity => ({
  '@id': orcid ?? `#person-${String(index + 1)}`,
  '@type': 'Person',
  name: name.full,
  ...(name.given === null ? {} : { givenName: name.given, familyName: name.family }),
  ...(email === null ? {} : { email }),
});

const variableEntity = (variable: DatasetVariable): Entity => ({
  '@id': `#variable-${variable.id}`,
  '@type': 'PropertyValue',
  name: variable.name,
  description: variable.method,
  ...(variable.trait === null ? {} : { propertyID: variable.trait.address }),
  ...(variable.unit === null ? {} : { unitText: variable.unit.ucum }),
  ...(typeof variable.unit?.unece === 'string' ? { unitCode: variable.unit.unece } : {}),
});

function placeEntities({ site }: Dataset): { place: Entity; all: Entity[] } {
  const { latitude, longitude } = site;
  const place = { '@id': '#place', '@type': 'Place', name: placeInWords(site) };
  if (latitude === undefined || longitude === undefined) return { place, all: [place] };
  const geo = { '@id': '#coordinates', '@type': 'GeoCoordinates', latitude, longitude };
  const there = { ...place, geo: reference(geo) };
  return { place: there, all: [there, geo] };
}

const taxonEntities = ({ taxon }: Dataset): Entity[] =>
  taxon === null ? [] : [{ '@id': taxon.address, '@type': 'Taxon', name: taxon.name, identifier: taxon.id }];

/** A file of the crate; those that are written after this one have no size or checksum here. */
const fileEntity = (file: PublishedFile): Entity => {
  const { name, mediaType, description, bytes, sha256 } = fileFacts(file);
  const sum = bytes === 0 ? {} : { contentSize: String(bytes), sha256 };
  return {
    '@id': encodeURIComponent(name),
    '@type': 'File',
    name,
    description,
    encodingFormat: mediaType,
    ...sum,
  };
};

/**
 * ro-crate-metadata.json: with it the archive's folder is an RO-Crate 1.2. A flat graph, in which every
 * entity stands once and others refer to it.
 *
 * @param files - every other file of the folder; those yet unwritten with no bytes.
 */
export function roCrate(set: Dataset, files: readonly PublishedFile[]): object {
  const creators = set.creators.map(personEntity);
  const contributors = set.contributors.map((each, index) => personEntity(each, set.creators.length + index));
  const publisher = { '@id': '#publisher', '@type': 'Organization', name: set.publisher };
  const licence = {
    '@id': set.licence.address,
    '@type': 'CreativeWork',
    name: set.licence.name,
    identifier: set.licence.id,
    description: set.licence.allows ?? `The terms of ${set.licence.name} hold.`,
  };
  const { place, all: places } = placeEntities(set);
  const taxa = taxonEntities(set);
  const variables = set.variables.map(variableEntity);
  const fileEntities = files.map(fileEntity);
  const root: Entity = {
    '@id': './',
    '@type': 'Dataset',
    name: set.title,
    description: set.description,
    identifier: set.identifier,
    url: set.dataPage,
    version: set.version,
    datePublished: set.released,
    dateCreated: set.created,
    license: reference(licence),
    keywords: set.keywords,
    creator: creators.map(reference),
    ...(contributors.length === 0 ? {} : { contributor: contributors.map(reference) }),
    publisher: reference(publisher),
    spatialCoverage: reference(place),
    ...(set.days === null ? {} : { temporalCoverage: `${set.days.first}/${set.days.last}` }),
    ...(taxa.length === 0 ? {} : { about: taxa.map(reference) }),
    variableMeasured: variables.map(reference),
    hasPart: fileEntities.map(reference),
  };
  return {
    '@context': 'https://w3id.org/ro/crate/1.2/context',
    '@graph': [
      {
        '@id': 'ro-crate-metadata.json',
        '@type': 'CreativeWork',
        conformsTo: { '@id': 'https://w3id.org/ro/crate/1.2' },
        about: { '@id': './' },
      },
      root,
      ...[
        ...fileEntities,
        ...creators,
        ...contributors,
        publisher,
        licence,
        ...places,
        ...taxa,
        ...variables,
      ],
    ],
  };
}
