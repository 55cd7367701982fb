import type { Library, TrialWithFindings } from '../model/library.ts';
import { address, siteAddress } from './addresses.ts';
import { datasetFacts } from './dataset-facts.ts';
import { dataset, finished, type Dataset } from './dataset.ts';
import { placeInWords } from './described-in-words.ts';
import { type GatheredTrial, gatheredTrials } from './gathered-trials.ts';
import { licence } from './licence.ts';

const context = {
  dcat: 'http://www.w3.org/ns/dcat#',
  dcterms: 'http://purl.org/dc/terms/',
  foaf: 'http://xmlns.com/foaf/0.1/',
  spdx: 'http://spdx.org/rdf/terms#',
  xsd: 'http://www.w3.org/2001/XMLSchema#',
  geo: 'http://www.opengis.net/ont/geosparql#',
};

const day = (value: string): object => ({ '@type': 'xsd:date', '@value': value });
const agent = (name: string): object => ({ '@type': 'foaf:Agent', 'foaf:name': name });

function location({ site }: Dataset): object {
  const { latitude, longitude } = site;
  return {
    '@type': 'dcterms:Location',
    'dcterms:title': placeInWords(site),
    ...(latitude === undefined || longitude === undefined
      ? {}
      : {
          'dcat:centroid': {
            '@type': 'geo:wktLiteral',
            '@value': `POINT(${String(longitude)} ${String(latitude)})`,
          },
        }),
  };
}

/** The tables and the archives; what else a dataset has, its data page and its archive hold. */
const gathered = new Set(['text/csv', 'application/zip']);

function distributions(item: TrialWithFindings, library: Library, set: Dataset): object[] {
  const files = datasetFacts(item, library).filter(({ mediaType }) => gathered.has(mediaType));
  return files.map(({ name, mediaType, description, bytes, sha256 }) => {
    const downloadAddress = set.dataPage + encodeURIComponent(name);
    return {
      '@id': downloadAddress,
      '@type': 'dcat:Distribution',
      'dcterms:title': name,
      'dcterms:description': description,
      'dcterms:license': { '@id': set.licence.address },
      'dcat:accessURL': { '@id': set.dataPage },
      'dcat:downloadURL': { '@id': downloadAddress },
      'dcat:mediaType': { '@id': `https://www.iana.org/assignments/media-types/${mediaType}` },
      'dcat:byteSize': { '@type': 'xsd:nonNegativeInteger', '@value': String(bytes) },
      'spdx:checksum': {
        '@type': 'spdx:Checksum',
        'spdx:algorithm': { '@id': 'spdx:checksumAlgorithm_sha256' },
        'spdx:checksumValue': { '@type': 'xsd:hexBinary', '@value': sha256 },
      },
    };
  });
}

function entry(item: TrialWithFindings, library: Library): object {
  const set = dataset(item, library);
  return {
    '@id': set.dataPage,
    '@type': 'dcat:Dataset',
    'dcterms:identifier': set.identifier,
    'dcterms:title': { '@language': set.language, '@value': set.title },
    'dcterms:description': { '@language': set.language, '@value': set.description },
    'dcat:version': set.version,
    'dcterms:created': day(set.created),
    'dcterms:issued': day(set.released),
    'dcterms:modified': day(set.released),
    'dcterms:license': { '@id': set.licence.address },
    'dcterms:creator': set.creators.map(({ name, orcid }) => ({
      ...(orcid === null ? {} : { '@id': orcid }),
      ...agent(name.full),
    })),
    'dcterms:publisher': agent(set.publisher),
    'dcterms:spatial': location(set),
    ...(set.days === null
      ? {}
      : {
          'dcterms:temporal': {
            '@type': 'dcterms:PeriodOfTime',
            'dcat:startDate': day(set.days.first),
            'dcat:endDate': day(set.days.last),
          },
        }),
    ...(set.taxon === null ? {} : { 'dcterms:subject': { '@id': set.taxon.address } }),
    'dcat:keyword': set.keywords.map((word) => ({ '@language': set.language, '@value': word })),
    'dcat:landingPage': { '@id': set.page },
    'dcat:distribution': distributions(item, library, set),
  };
}

/** The catalogues of the sites that trials were gathered from, with the datasets gathered, described by what is there. */
function catalogsOfOthers(library: Library): object {
  const sites = Map.groupBy(gatheredTrials(library), ({ origin }) => origin.folder);
  if (sites.size === 0) return {};
  return {
    'dcat:catalog': [...sites.values()].map((trials) => {
      const { title, address: home } = trials[0]!.origin;
      const site = home.endsWith('/') ? home : `${home}/`;
      return {
        '@id': `${site}data/catalog.jsonld`,
        '@type': 'dcat:Catalog',
        'dcterms:title': title,
        'dcterms:description': `Datasets of another site, ${title}, that are compared with those of this one.`,
        'foaf:homepage': { '@id': site },
        'dcat:dataset': trials.map((trial) => entryOfOthers(trial)),
      };
    }),
  };
}

function entryOfOthers({ title, version, creators, licence: terms, crop, season, origin }: GatheredTrial) {
  const grown = `${crop.name}, ${season.name} ${String(season.year)}`;
  return {
    '@id': origin.data,
    '@type': 'dcat:Dataset',
    'dcterms:title': title,
    'dcterms:description': `A growing trial of ${origin.title} (${grown}), gathered on ${origin.gathered}.`,
    'dcterms:identifier': origin.identifier,
    'dcat:version': version,
    'dcterms:license': { '@id': terms.address },
    'dcterms:creator': creators.map(agent),
    'dcat:landingPage': { '@id': origin.page },
  };
}

/** data/catalog.jsonld: the site's datasets as a DCAT 3 catalogue, in the order of their ids. */
export function catalog(library: Library): object {
  const { site } = library;
  const items = library.trials.filter((item) => finished(item) !== null);
  const inOrder = [...items].sort((a, b) => (a.trial.id < b.trial.id ? -1 : 1));
  return {
    '@context': context,
    '@id': address(site, 'data/catalog.jsonld'),
    '@type': 'dcat:Catalog',
    'dcterms:title': site.title,
    'dcterms:description': site.description ?? `The datasets of ${site.title}.`,
    'dcterms:publisher': agent(site.publisher),
    'dcterms:license': { '@id': licence(site.licence).address },
    'dcterms:language': site.language ?? 'en',
    'foaf:homepage': { '@id': siteAddress(site) },
    'dcat:dataset': inOrder.map((item) => entry(item, library)),
    ...catalogsOfOthers(library),
  };
}
