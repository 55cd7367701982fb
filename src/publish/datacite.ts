import type { CreditedPerson } from './credited-people.ts';
import type { Dataset } from './dataset.ts';
import { placeInWords } from './described-in-words.ts';
import { sortedName } from './person-name.ts';

const contributorTypes = {
  recorder: 'DataCollector',
  contact: 'ContactPerson',
  grower: 'Researcher',
  author: 'Researcher',
} as const;

function person({ name, orcid }: CreditedPerson): object {
  return {
    name: sortedName(name),
    nameType: 'Personal',
    ...(name.given === null ? {} : { givenName: name.given, familyName: name.family }),
    ...(orcid === null
      ? {}
      : {
          nameIdentifiers: [
            { nameIdentifier: orcid, nameIdentifierScheme: 'ORCID', schemeUri: 'https://orcid.org' },
          ],
        }),
  };
}

function subjects(set: Dataset): object[] {
  const words = set.keywords.map((subject) => ({ subject }));
  if (set.taxon === null) return words;
  const ncbi = { subjectScheme: 'NCBI Taxonomy', schemeUri: 'https://www.ncbi.nlm.nih.gov/taxonomy' };
  const taxon = {
    subject: set.taxon.name,
    ...ncbi,
    valueUri: set.taxon.address,
    classificationCode: set.taxon.id,
  };
  return [...words, taxon];
}

function geoLocation({ site }: Dataset): object {
  const { latitude, longitude } = site;
  return {
    geoLocationPlace: placeInWords(site),
    ...(latitude === undefined || longitude === undefined
      ? {}
      : { geoLocationPoint: { pointLatitude: latitude, pointLongitude: longitude } }),
  };
}

function dates(set: Dataset): object[] {
  return [
    { date: set.released, dateType: 'Issued' },
    { date: set.created, dateType: 'Created' },
    ...(set.days === null ? [] : [{ date: `${set.days.first}/${set.days.last}`, dateType: 'Collected' }]),
  ];
}

/**
 * datacite.json: DataCite 4.5 metadata as a registrar takes them. It holds a DOI only where the trial has
 * one; without it the registrar gives one.
 */
export function datacite(set: Dataset): object {
  return {
    schemaVersion: 'http://datacite.org/schema/kernel-4',
    ...(set.doi === null ? {} : { doi: set.doi }),
    url: set.dataPage,
    types: { resourceTypeGeneral: 'Dataset', resourceType: 'Growing trial' },
    creators: set.creators.map(person),
    titles: [{ title: set.title, lang: set.language }],
    publisher: { name: set.publisher },
    publicationYear: set.released.slice(0, 4),
    subjects: subjects(set),
    contributors: set.contributors.flatMap((each) =>
      each.parts.map((part) => ({ ...person(each), contributorType: contributorTypes[part] })),
    ),
    dates: dates(set),
    language: set.language,
    version: set.version,
    formats: ['text/csv', 'application/json', 'application/zip'],
    rightsList: [
      {
        rights: set.licence.name,
        rightsUri: set.licence.address,
        rightsIdentifier: set.licence.id,
        rightsIdentifierScheme: 'SPDX',
        schemeUri: 'https://spdx.org/licenses/',
      },
    ],
    descriptions: [
      { description: set.description, descriptionType: 'Abstract', lang: set.language },
      {
        description: set.variables.map((variable) => `${variable.name}: ${variable.method}`).join(' '),
        descriptionType: 'Methods',
        lang: set.language,
      },
    ],
    geoLocations: [geoLocation(set)],
    relatedIdentifiers: [
      { relatedIdentifier: set.page, relatedIdentifierType: 'URL', relationType: 'IsDescribedBy' },
      ...set.related.map((work) => ({
        relatedIdentifier: work.value,
        relatedIdentifierType: work.kind === 'doi' ? 'DOI' : 'URL',
        relationType: 'References',
      })),
    ],
  };
}
