import type { Library, TrialWithFindings } from '../model/library.ts';
import { dataset, finished, type FinishedTrial } from './dataset.ts';
import { jsonFile, textFile, type PublishedFile } from './published-file.ts';
import { csvText } from './csv.ts';
import { summaryTable } from './summary-table.ts';
import { weightsTable } from './weights-table.ts';

const csv = 'text/csv';

/** The trial folder's own CSV files, byte for byte as given. */
const given: Record<string, string> = {
  'harvest.csv': 'The weights as the grower wrote them down, byte for byte.',
  'layout.csv': 'What was planted where, as the grower wrote it down, byte for byte.',
  'readings.csv': 'Readings of the water and the solution, as the grower wrote them down, byte for byte.',
};

function givenFiles({ trial }: FinishedTrial): PublishedFile[] {
  return Object.entries(given).flatMap(([name, description]) => {
    const bytes = trial.files.get(name);
    return bytes === undefined ? [] : [{ name, bytes, mediaType: csv, description }];
  });
}

function tidyFiles({ trial, findings }: FinishedTrial): PublishedFile[] {
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

function everyFile(trial: FinishedTrial, item: TrialWithFindings, library: Library): PublishedFile[] {
  dataset(item, library);
  return [...givenFiles(trial), ...tidyFiles(trial)];
}
