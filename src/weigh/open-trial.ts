import { collector } from '../check/collect.ts';
import { fullGrid } from '../check/full-grid.ts';
import { readHarvest } from '../check/read-harvest.ts';
import { readLayout } from '../check/read-layout.ts';
import { readMetadata } from '../check/read-metadata.ts';
import { readReadings } from '../check/read-readings.ts';
import { hasTooManyPositions } from '../check/rules/too-many-positions.ts';
import type { Problem } from '../model/problem.ts';
import type { TrialMetadata } from '../model/trial.ts';
import type { GivenTrial } from '../read/trial-folders.ts';
import { givenRows } from './given-rows.ts';
import { givenReadings, type GivenReadings } from './readings-csv.ts';
import type { WeighStart } from './weigh-state.ts';

/** All that a weigh-in of a trial's folder begins with. */
export interface OpenedTrial extends WeighStart {
  /** The folder's files by path; null where the trial was opened from the site, without its folder. */
  files: ReadonlyMap<string, Uint8Array> | null;
  readings: GivenReadings | null;
}

/** A folder opened, or why it cannot be weighed in from. */
export type Opening = { opened: OpenedTrial; problems: Problem[] } | { opened: null; problems: Problem[] };

/** What must be whole before anything can be weighed. */
const needed = ['containers', 'variables', 'factors', 'harvest'] as const;

/**
 * Opens a trial's folder for weighing. A fault elsewhere does not keep the grower from weighing: trial.yaml must
 * say what stands where and what is measured, and every position must be known.
 */
export function openTrial({ name, files }: GivenTrial): Opening {
  const { report, problems } = collector('');
  const bytes = files.get('trial.yaml');
  const metadata = bytes === undefined ? null : readMetadata(bytes, report);
  if (metadata === null) return { opened: null, problems };
  const { containers, variables, title } = metadata.draft;
  const isWhole =
    containers !== undefined && variables !== undefined && !needed.some((key) => metadata.lost.has(key));
  if (!isWhole || hasTooManyPositions(containers)) return { opened: null, problems };
  const layoutBytes = files.get('layout.csv');
  const layout =
    layoutBytes === undefined ? fullGrid(metadata, report) : readLayout(layoutBytes, metadata, report);
  if (!layout.complete || layout.positions.length === 0) return { opened: null, problems };
  const harvestBytes = files.get('harvest.csv');
  const isBare = harvestBytes === undefined || new TextDecoder().decode(harvestBytes).trim() === '';
  const before = problems.length;
  const harvest = isBare ? null : readHarvest(harvestBytes, metadata, layout, report);
  // Rows that cannot be read would be lost on the way out.
  const isRead = isBare || (harvest !== null && !problems.slice(before).some(isOfForm));
  if (!isRead) return { opened: null, problems };
  const readingsBytes = files.get('readings.csv');
  const readings = readingsBytes === undefined ? null : readReadings(readingsBytes, metadata, report);
  if (readingsBytes !== undefined && readings === null) return { opened: null, problems };
  const draft = { ...metadata.draft, title: title ?? name ?? 'trial' } as TrialMetadata;
  const rows = harvest === null ? { given: [], remarks: [] } : givenRows(harvest, draft);
  const trial = { id: name ?? 'the-trial', metadata: draft, positions: layout.positions };
  const opened = { trial, ...rows, files, readings: readings === null ? null : givenReadings(readings) };
  return { opened, problems };
}

/** An error within harvest.csv: a row that would not come out as it went in. */
const isOfForm = ({ severity }: Problem): boolean => severity === 'error';
