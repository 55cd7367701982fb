import type { Library, TrialWithFindings } from '../model/library.ts';
import type { Findings } from '../model/findings.ts';
import type { Release, Trial, TrialMetadata } from '../model/trial.ts';
import { dataPage, trialPage } from './addresses.ts';
import { creditedPeople, type CreditedPerson } from './credited-people.ts';
import { datasetVariables, type DatasetVariable } from './dataset-variables.ts';
import { describedInWords } from './described-in-words.ts';
import { ownDoi, relatedWorks, type RelatedWork } from './related-works.ts';
import { licence, type Licence } from './licence.ts';

/** What every metadata file says of a trial's dataset: one model, so that two files never disagree. */
export interface Dataset {
  id: string;
  title: string;
  /** 50 to 5000 characters: the trial's summary, or built from what the trial says of itself. */
  description: string;
  version: string;
  /** BCP 47. */
  language: string;
  /** Who the dataset is cited by: the authors and growers, or everybody where there are none. */
  creators: readonly CreditedPerson[];
  /** The others who had a part. */
  contributors: readonly CreditedPerson[];
  publisher: string;
  licence: Licence;
  /** The day of the first release, ISO 8601. */
  created: string;
  /** The day of this release. */
  released: string;
  releases: readonly Release[];
  keywords: readonly string[];
  crop: TrialMetadata['crop'];
  /** The species in the NCBI taxonomy, where trial.yaml names it. */
  taxon: { id: string; address: string; name: string } | null;
  site: TrialMetadata['site'];
  /** First and last day of the trial, ISO 8601; null where no day is given. */
  days: { first: string; last: string } | null;
  variables: readonly DatasetVariable[];
  page: string;
  dataPage: string;
  /** Its own DOI, bare (10.5555/12345678); null until trial.yaml has one. */
  doi: string | null;
  /** The DOI as an address, else the data page. */
  identifier: string;
  related: readonly RelatedWork[];
  archive: string;
}

/** A finished trial: what has a dataset. */
export interface FinishedTrial {
  trial: Trial;
  findings: Findings;
}

/** The trial with its findings where it is finished, else null: a planned or growing one has no dataset. */
export function finished(item: TrialWithFindings): FinishedTrial | null {
  const { trial, findings } = item;
  return trial.metadata.status === 'finished' && findings !== null ? { trial, findings } : null;
}

function taxonOf(crop: TrialMetadata['crop']): Dataset['taxon'] {
  if (crop.taxon === undefined) return null;
  const address = `http://purl.obolibrary.org/obo/${crop.taxon.replace(':', '_')}`;
  return { id: crop.taxon, address, name: crop.species ?? crop.name };
}

function daysOf(metadata: TrialMetadata): Dataset['days'] {
  const { sown, germinated, transplanted, cuts = [] } = metadata.dates ?? {};
  const days = [sown, germinated, transplanted, ...cuts].filter((day) => day !== undefined).sort();
  const [first] = days;
  const last = days.at(-1);
  return first === undefined || last === undefined ? null : { first, last };
}

function keywordsOf(metadata: TrialMetadata): string[] {
  const words = [
    metadata.crop.name,
    metadata.crop.species,
    'growing trial',
    'hydroponics',
    metadata.design.arrangement,
    metadata.site.setting,
    `${metadata.season.name} ${String(metadata.season.year)}`,
    ...metadata.variables.map((variable) => variable.name),
  ];
  return [...new Set(words.filter((word) => word !== undefined))];
}

/** The day on which a version was released; the newest release's, or the last cut's where none names it. */
export function releaseDay(metadata: TrialMetadata): string {
  const { releases = [], version, dates } = metadata;
  const named = releases.find((release) => release.version === version) ?? releases.at(-1);
  return named?.date ?? dates?.cuts?.at(-1) ?? `${String(metadata.season.year)}-12-31`;
}

/** The one model of a trial's dataset. */
export function dataset(item: TrialWithFindings, library: Library): Dataset {
  const { id, metadata } = item.trial;
  const { site } = library;
  const { creators, contributors } = creditedPeople(metadata.people);
  const released = releaseDay(metadata);
  const doi = ownDoi(metadata.related ?? []);
  return {
    id,
    title: metadata.title,
    description: describedInWords(metadata),
    version: metadata.version,
    language: site.language ?? 'en',
    creators,
    contributors,
    publisher: site.publisher,
    licence: licence(metadata.licence),
    created: metadata.releases?.[0]?.date ?? released,
    released,
    releases: metadata.releases ?? [],
    keywords: keywordsOf(metadata),
    crop: metadata.crop,
    taxon: taxonOf(metadata.crop),
    site: metadata.site,
    days: daysOf(metadata),
    variables: datasetVariables(metadata),
    page: trialPage(site, id),
    dataPage: dataPage(site, id),
    doi,
    identifier: doi === null ? dataPage(site, id) : `https://doi.org/${doi}`,
    related: relatedWorks(metadata.related ?? []),
    archive: `${id}-${metadata.version}.zip`,
  };
}
