import type { Library, TrialWithFindings } from '../model/library.ts';
import { archive } from './archive.ts';
import { csvText } from './csv.ts';
import { dataset, finished, type Dataset, type FinishedTrial } from './dataset.ts';
import { earlierVersions } from './earlier-versions.ts';
import { metadataFiles } from './metadata-files.ts';
import { jsonFile, textFile, type PublishedFile } from './published-file.ts';
import { readmeText } from './readme-text.ts';
import { roCrate } from './ro-crate.ts';
import { sha256Sums } from './sha256-sums.ts';
import { summaryTable } from './summary-table.ts';
import { weightsTable } from './weights-table.ts';

const csv = 'text/csv';

/** The trial folder's own CSV files, byte for byte as given. */
const given: Record<string, string> = {
  'harvest.csv': 'The weights as the grower wrote them down, byte for byte.',
  'layout.csv': 'What was planted where, as the grower wrote it down, byte for byte.',
  'readings.csv': 'Readings of the water and the solution, as the grower wrote them down, byte for byte.',
};

function givenTables({ trial }: FinishedTrial): PublishedFile[] {
  return Object.entries(given).flatMap(([name, description]) => {
    const bytes = trial.files.get(name);
    return bytes === undefined ? [] : [{ name, bytes, mediaType: csv, description }];
  });
}

function tidyTables({ trial, findings }: FinishedTrial): PublishedFile[] {
  return [
    textFile(
      'weights.csv',
      csv,
      'The weights to work with: the harvest joined with the layout, in g.',
      csvText(weightsTable(trial)),
    ),
    textFile(
      'summary.csv',
      csv,
      'Means, spreads and counts of each treatment, as the page shows them but to full precision.',
      csvText(summaryTable(trial, findings)),
    ),
  ];
}

function documents({ trial, findings }: FinishedTrial): PublishedFile[] {
  return [
    jsonFile(
      'findings.json',
      'application/json',
      'Every number that the page shows, to full precision, with the reason where one cannot be given.',
      findings,
    ),
    jsonFile('trial.json', 'application/json', 'What the grower said of the trial: trial.yaml as JSON.', {
      id: trial.id,
      ...trial.metadata,
    }),
  ];
}

const unwritten = (name: string, mediaType: string, description: string): PublishedFile =>
  textFile(name, mediaType, description, '');

const readme = unwritten('README.txt', 'text/plain', 'What a person reads first.');
const crate = unwritten(
  'ro-crate-metadata.json',
  'application/ld+json',
  'What the archive holds, for programs (RO-Crate 1.2).',
);
const sums = unwritten('SHA256SUMS', 'text/plain', 'The checksum of every other file.');

/** The last files, each of which says something of those before it, and the archive of them all. */
function withArchive(set: Dataset, written: readonly PublishedFile[]): PublishedFile[] {
  const readmeFile = textFile(
    readme.name,
    readme.mediaType,
    readme.description,
    readmeText(set, [readme, ...written, crate, sums]),
  );
  const before = [readmeFile, ...written];
  const crateFile = jsonFile(crate.name, crate.mediaType, crate.description, roCrate(set, [...before, sums]));
  const sumsFile = textFile(sums.name, sums.mediaType, sums.description, sha256Sums([...before, crateFile]));
  const all = [...before, crateFile, sumsFile];
  const bytes = archive(`${set.id}-${set.version}`, set.released, all);
  const description = `All of these files in one archive, version ${set.version}.`;
  return [...all, { name: set.archive, bytes, mediaType: 'application/zip', description }];
}

function everyFile(trial: FinishedTrial, item: TrialWithFindings, library: Library): PublishedFile[] {
  const set = dataset(item, library);
  const tables = [...tidyTables(trial), ...givenTables(trial)];
  const written = [...tables, ...documents(trial), ...metadataFiles(set, trial.trial, tables)];
  return [...withArchive(set, written), ...earlierVersions(trial.trial)];
}

const known = Symbol.for('tankside.published-files');
type Memory = WeakMap<TrialWithFindings, WeakMap<Library, PublishedFile[]>>;
/** Shared by the command and the pages' bundle, which each hold their own copy of this module. */
const shelf = globalThis as unknown as Record<symbol, Memory | undefined>;
const memory = (shelf[known] ??= new WeakMap());

/**
 * The files of a trial's dataset, for `/data/<id>/`; none where the trial is not finished. They are made
 * once for each library.
 */
export function publishedFiles(item: TrialWithFindings, library: Library): PublishedFile[] {
  const trial = finished(item);
  if (trial === null) return [];
  const made = memory.get(item)?.get(library);
  if (made !== undefined) return made;
  const files = everyFile(trial, item, library);
  const ofTrial = memory.get(item) ?? new WeakMap<Library, PublishedFile[]>();
  memory.set(item, ofTrial.set(library, files));
  return files;
}
