import type { DatasetIndex } from '../model/generated/index.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import { siteAddress } from './addresses.ts';
import { datasetFacts } from './dataset-facts.ts';
import { dataset, finished } from './dataset.ts';
import { fileFacts } from './file-facts.ts';
import { type GatheredTrial, gatheredTrials } from './gathered-trials.ts';
import { jsonFile, type PublishedFile } from './published-file.ts';

type Entry = DatasetIndex['datasets'][number];

function entry(item: TrialWithFindings, library: Library): Entry[] {
  const trial = finished(item);
  if (trial === null) return [];
  const { metadata } = trial.trial;
  const set = dataset(item, library);
  const files = datasetFacts(item, library).map(({ name, mediaType, bytes, sha256, description }) => {
    return { name, address: `${set.id}/${name}`, media_type: mediaType, bytes, sha256, description };
  });
  return [
    {
      id: set.id,
      title: set.title,
      description: set.description,
      status: 'finished',
      version: set.version,
      released: set.released,
      licence: { id: set.licence.id, address: set.licence.address },
      identifier: set.identifier,
      crop: { name: set.crop.name, species: set.crop.species ?? null, taxon: set.crop.taxon ?? null },
      season: metadata.season,
      place: {
        name: set.site.name,
        region: set.site.region ?? null,
        country: set.site.country ?? null,
        setting: set.site.setting,
      },
      design: {
        arrangement: metadata.design.arrangement,
        allotted: metadata.design.allotted,
        randomised: metadata.design.randomised,
        containers: metadata.containers.length,
        factors: (metadata.factors ?? []).map((factor) => ({
          id: factor.id,
          levels: factor.levels.map((level) => level.id),
        })),
      },
      cuts: metadata.dates?.cuts ?? [],
      counts: trial.findings.counts,
      variables: set.variables.map(({ id, name, unit }) => ({ id, name, unit: unit?.ucum ?? null })),
      page: `../trials/${set.id}/`,
      data: `${set.id}/`,
      archive: `${set.id}/${set.archive}`,
      files,
    },
  ];
}

function gatheredEntry(trial: GatheredTrial): NonNullable<DatasetIndex['gathered']>[number] {
  const { id, title, version, creators, season, origin } = trial;
  const { identifier, page, data, gathered } = origin;
  const site = { title: origin.title, address: origin.address };
  return {
    id,
    title,
    version,
    creators: [...creators],
    licence: trial.licence.id,
    season,
    identifier,
    page,
    data,
    site,
    gathered,
  };
}

/** data/cultivars.json: what the ids of this site's cultivars mean, so that other sites can tell. */
export function cultivarsFile({ cultivars }: Library): PublishedFile {
  return jsonFile(
    'data/cultivars.json',
    'application/json',
    'The cultivars of this site with their names, species and synonyms, for programs.',
    cultivars,
  );
}

/** Every dataset of the site, in the order of their ids; `schemas/index.schema.json` describes it. */
export function datasetIndex(library: Library): DatasetIndex {
  const { site, trials } = library;
  const { bytes, sha256 } = fileFacts(cultivarsFile(library));
  const inOrder = [...trials].sort((a, b) => (a.trial.id < b.trial.id ? -1 : 1));
  return {
    $schema: 'index.schema.json',
    form: 1,
    site: {
      title: site.title,
      address: siteAddress(site),
      publisher: site.publisher,
      language: site.language ?? 'en',
    },
    datasets: inOrder.flatMap((item) => entry(item, library)),
    cultivars: { address: 'cultivars.json', bytes, sha256 },
    gathered: gatheredTrials(library).map(gatheredEntry),
  };
}
