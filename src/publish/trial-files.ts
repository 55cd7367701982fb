import type { Library, TrialWithFindings } from '../model/library.ts';
import { publishedMetadata } from '../model/published-metadata.ts';
import type { Trial } from '../model/trial.ts';
import { analysisScript } from './analysis-script.ts';
import { archive } from './archive.ts';
import { dataset, finished, type Dataset, type FinishedTrial } from './dataset.ts';
import { earlierVersions } from './earlier-versions.ts';
import { metadataFiles } from './metadata-files.ts';
import { pagesOnly } from './pages-only.ts';
import { describedAs, jsonFile, textFile, type PublishedFile } from './published-file.ts';
import { readmeText } from './readme-text.ts';
import { roCrate } from './ro-crate.ts';
import { sha256Sums } from './sha256-sums.ts';
import { tableFiles } from './table-files.ts';

/** What is neither table nor metadata. */
function documents({ trial, findings }: FinishedTrial): PublishedFile[] {
  return [
    textFile(
      'analysis.R',
      'text/x-r',
      'A script in plain R that reads weights.csv and computes the published figures anew.',
      analysisScript({ trial, findings }),
    ),
    jsonFile(
      'findings.json',
      'application/json',
      'Every number that the page shows, to full precision, with the reason where one cannot be given.',
      findings,
    ),
    jsonFile('trial.json', 'application/json', 'What the grower said of the trial: trial.yaml as JSON.', {
      id: trial.id,
      ...publishedMetadata(trial.metadata),
    }),
    ...sheetFiles(trial),
  ];
}

/** The fact sheets as their authors wrote them. */
function sheetFiles({ factSheets = [], files }: Trial): PublishedFile[] {
  return factSheets.flatMap(({ file, language }) => {
    const name = file.split('/').at(-1)!;
    const bytes = files.get(name);
    const described =
      language === null
        ? { description: 'The fact sheet as its author wrote it: Markdown with the names of what it shows.' }
        : describedAs(
            'The fact sheet in the language {language} as its author wrote it: Markdown with the names of what it shows.',
            { language },
          );
    return bytes === undefined ? [] : [{ name, bytes, mediaType: 'text/markdown', ...described }];
  });
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
function withArchive(set: Dataset, trial: Trial, written: readonly PublishedFile[]): PublishedFile[] {
  const readmeFile = textFile(
    readme.name,
    readme.mediaType,
    readme.description,
    readmeText(set, trial.queries, [readme, ...written, crate, sums]),
  );
  const before = [readmeFile, ...written];
  const crateFile = jsonFile(crate.name, crate.mediaType, crate.description, roCrate(set, [...before, sums]));
  const sumsFile = textFile(sums.name, sums.mediaType, sums.description, sha256Sums([...before, crateFile]));
  const all = [...before, crateFile, sumsFile];
  const bytes = archive(`${set.id}-${set.version}`, set.released, all);
  const described = describedAs('All of these files in one archive, version {version}.', {
    version: set.version,
  });
  return [...all, { name: set.archive, bytes, mediaType: 'application/zip', ...described }];
}

function everyFile(trial: FinishedTrial, item: TrialWithFindings, library: Library): PublishedFile[] {
  const set = dataset(item, library);
  const tables = tableFiles(set, trial);
  const written = [
    ...tables.files,
    ...documents(trial),
    ...metadataFiles(set, trial.trial, tables.resources),
  ];
  return [...withArchive(set, trial.trial, written), ...earlierVersions(trial.trial)];
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
  if (trial === null || pagesOnly()) return [];
  const made = memory.get(item)?.get(library);
  if (made !== undefined) return made;
  const files = everyFile(trial, item, library);
  const ofTrial = memory.get(item) ?? new WeakMap<Library, PublishedFile[]>();
  memory.set(item, ofTrial.set(library, files));
  return files;
}
