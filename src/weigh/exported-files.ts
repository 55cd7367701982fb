import { zipSync, type Zippable } from 'fflate';
import type { TrialMetadata } from '../model/trial.ts';
import { harvestCsv } from './harvest-csv.ts';
import type { OpenedTrial } from './open-trial.ts';
import { readingsCsv } from './readings-csv.ts';
import { rowsText } from './rows-text.ts';
import { editedTrial, editLines, noEdits, type TrialEdits } from './trial-edits.ts';
import type { WeighState } from './weigh-state.ts';
import type { WeighTrial } from '../model/weigh-trial.ts';

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** The tables of a weigh-in, by their names in the trial's folder. */
export function exportedTables(opened: OpenedTrial, state: WeighState): Map<string, string> {
  const readings = readingsCsv(opened.readings, state.readings);
  return new Map([
    ['harvest.csv', harvestCsv(state)],
    ...(readings === null ? [] : [['readings.csv', readings] as const]),
  ]);
}

/**
 * The files of a trial's folder as a weigh-in leaves it: trial.yaml with the edits that were agreed to, the tables,
 * and all else byte for byte. A trial that was opened from the site has no folder here: then its tables, and what is
 * to be written into trial.yaml.
 */
export function exportedFiles(
  opened: OpenedTrial,
  state: WeighState,
  edits: TrialEdits,
): Map<string, Uint8Array> {
  const files = new Map(opened.files ?? []);
  for (const [name, text] of exportedTables(opened, state)) files.set(name, encoder.encode(text));
  const source = opened.files?.get('trial.yaml');
  const lines = editLines(edits);
  if (source !== undefined && lines.length > 0)
    files.set('trial.yaml', encoder.encode(editedTrial(decoder.decode(source), state.trial.metadata, edits)));
  if (opened.files === null && lines.length > 0)
    files.set('for-trial-yaml.txt', encoder.encode(`${lines.join('\n')}\n`));
  return files;
}

/** The folder as the check is to see it: called finished, so that nothing passes that would not pass then. */
export function filesToCheck(
  opened: OpenedTrial,
  state: WeighState,
  edits: TrialEdits,
): Map<string, Uint8Array> {
  if (opened.files !== null) return exportedFiles(opened, state, edits);
  const { trial } = state;
  const source = JSON.stringify(trial.metadata);
  const files = exportedFiles(opened, state, noEdits);
  files.set('trial.yaml', encoder.encode(editedTrial(source, trial.metadata, edits)));
  files.set('layout.csv', encoder.encode(layoutCsv(trial)));
  return files;
}

/** layout.csv of a trial of the site, from its positions. */
function layoutCsv({ metadata, positions }: WeighTrial): string {
  const factors = (metadata.factors ?? []).map(({ id }) => id);
  const has = (name: 'block' | 'plot') => positions.some((position) => position[name] !== null);
  const more = [...(has('block') ? ['block' as const] : []), ...(has('plot') ? ['plot' as const] : [])];
  const { delimiter = ',' }: NonNullable<TrialMetadata['harvest']> = metadata.harvest ?? {};
  const rows = positions.map((position) => [
    position.container,
    String(position.row),
    String(position.column),
    ...factors.map((factor) => position.treatment[factor] ?? ''),
    ...more.map((name) => position[name] ?? ''),
    String(position.plants),
  ]);
  return rowsText([['container', 'row', 'column', ...factors, ...more, 'plants'], ...rows], delimiter);
}

/** What is compressed already is stored as it is. */
const packed = /\.(?:jpe?g|png|webp|zip)$/i;

/** A zip of one folder. The same files of the same day make the same bytes. */
export function zipOfFolder(folder: string, files: ReadonlyMap<string, Uint8Array>, day: string): Uint8Array {
  const [year = 1980, month = 1, date = 1] = day.split('-').map(Number);
  // Local time is what a zip holds: noon of the day is made, wherever that is.
  const mtime = new Date(Math.max(year, 1980), month - 1, date, 12);
  const entries = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  const tree: Zippable = Object.fromEntries(
    entries.map(([path, bytes]) => [`${folder}/${path}`, [bytes, { level: packed.test(path) ? 0 : 6 }]]),
  );
  return zipSync(tree, { mtime });
}
