import type { Library, TrialWithFindings } from '../model/library.ts';
import { address, siteAddress } from './addresses.ts';
import type { CreditedPerson } from './credited-people.ts';
import { datasetFacts } from './dataset-facts.ts';
import { dataset, type Dataset } from './dataset.ts';
import type { DatasetVariable } from './dataset-variables.ts';
import { placeInWords } from './described-in-words.ts';

const person = ({ name, orcid, email }: CreditedPerson): object => ({
  '@type': 'Person',
  ...(orcid === null ? {} : { '@id': orcid, identifier: orcid }),
  name: name.full,
  ...(name.given === null ? {} : { givenName: name.given, familyName: name.family }),
  ...(email === null ? {} : { email }),
});

/** What was measured, with its unit in words and in UN/CEFACT's code, and the trait as its property. */
const variableMeasured = (variable: DatasetVariable): object => ({
  '@type': 'PropertyValue',
  name: variable.name,
  alternateName: variable.id,
  ...(variable.trait === null ? {} : { propertyID: variable.trait.address }),
  ...(variable.unit === null ? {} : { unitText: variable.unit.ucum }),
  ...(typeof variable.unit?.unece === 'string' ? { unitCode: variable.unit.unece } : {}),
  measurementTechnique: variable.method,
});

/** The place, no finer than trial.yaml gives it. */
function spatialCoverage({ site }: Dataset): object {
  const { latitude, longitude, elevation_m: elevation } = site;
  return {
    '@type': 'Place',
    name: placeInWords(site),
    ...(site.country === undefined && site.region === undefined
      ? {}
      : {
          address: {
            '@type': 'PostalAddress',
            ...(site.region === undefined ? {} : { addressRegion: site.region }),
            ...(site.country === undefined ? {} : { addressCountry: site.country }),
          },
        }),
    ...(latitude === undefined || longitude === undefined
      ? {}
      : {
          geo: {
            '@type': 'GeoCoordinates',
            latitude,
            longitude,
            ...(elevation === undefined ? {} : { elevation }),
          },
        }),
  };
}

function about({ taxon, crop }: Dataset): object {
  if (taxon === null) return { '@type': 'Thing', name: crop.species ?? crop.name };
  const names = { name: taxon.name, alternateName: crop.name, identifier: taxon.id };
  return { '@type': 'Taxon', '@id': taxon.address, ...names };
}

function distributions(item: TrialWithFindings, library: Library, set: Dataset): object[] {
  return datasetFacts(item, library).map(({ name, mediaType, description, bytes, sha256 }) => ({
    '@type': 'DataDownload',
    name,
    description,
    contentUrl: set.dataPage + encodeURIComponent(name),
    encodingFormat: mediaType,
    contentSize: `${String(bytes)} B`,
    sha256,
  }));
}

/** The schema.org Dataset of a finished trial, for the head of its pages. */
export function datasetJsonLd(item: TrialWithFindings, library: Library): object {
  const set = dataset(item, library);
  const { site } = library;
  return {
    '@context': 'https://schema.org/',
    '@type': 'Dataset',
    '@id': set.dataPage,
    name: set.title,
    description: set.description,
    url: set.dataPage,
    identifier:
      set.doi === null
        ? set.identifier
        : {
            '@type': 'PropertyValue',
            propertyID: 'https://registry.identifiers.org/registry/doi',
            value: `doi:${set.doi}`,
            url: set.identifier,
          },
    sameAs: set.doi === null ? set.page : set.identifier,
    version: set.version,
    license: set.licence.address,
    isAccessibleForFree: true,
    keywords: set.keywords,
    creator: set.creators.map(person),
    ...(set.contributors.length === 0 ? {} : { contributor: set.contributors.map(person) }),
    publisher: { '@type': 'Organization', name: set.publisher, url: siteAddress(site) },
    dateCreated: set.created,
    datePublished: set.released,
    dateModified: set.released,
    inLanguage: set.language,
    ...(set.days === null ? {} : { temporalCoverage: `${set.days.first}/${set.days.last}` }),
    spatialCoverage: spatialCoverage(set),
    about: about(set),
    variableMeasured: set.variables.map(variableMeasured),
    measurementTechnique: [...new Set(set.variables.map((variable) => variable.method))],
    ...(set.related.length === 0 ? {} : { citation: set.related.map((work) => work.address) }),
    includedInDataCatalog: {
      '@type': 'DataCatalog',
      name: site.title,
      url: address(site, 'data/'),
    },
    distribution: distributions(item, library, set),
  };
}

/** JSON for a script element of a page: nothing in it can end the element or open a comment. */
export function jsonForScript(value: object): string {
  return JSON.stringify(value).replaceAll('<', '\\u003c');
}
