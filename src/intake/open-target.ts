import { collector } from '../check/collect.ts';
import { fullGrid } from '../check/full-grid.ts';
import { readHarvest } from '../check/read-harvest.ts';
import { readLayout } from '../check/read-layout.ts';
import { readMetadata } from '../check/read-metadata.ts';
import { hasTooManyPositions } from '../check/rules/too-many-positions.ts';
import type { Problem } from '../model/problem.ts';
import type { Position, TrialMetadata } from '../model/trial.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import { knownTrial, type KnownTrial } from './known.ts';

/** A trial's folder that a spreadsheet is brought into. */
export interface Target {
  id: string;
  files: FolderFiles;
  known: KnownTrial;
  metadata: TrialMetadata;
  /** What stands where; null where neither layout.csv nor the containers' own treatments say so yet. */
  positions: readonly Position[] | null;
  /** How many rows of harvest.csv already hold a value. */
  filled: number;
}

/** Opens a folder; the target is null where trial.yaml does not say what stands where and what is measured. */
export function openTarget(id: string, files: FolderFiles): { target: Target | null; problems: Problem[] } {
  const { report, problems } = collector('');
  const bytes = files.get('trial.yaml');
  const metadata = bytes === undefined ? null : readMetadata(bytes, report);
  const { containers, variables } = metadata?.draft ?? {};
  const isWhole =
    metadata !== null &&
    containers !== undefined &&
    variables !== undefined &&
    !['containers', 'variables', 'factors'].some((key) => metadata.lost.has(key));
  if (!isWhole || hasTooManyPositions(containers)) return { target: null, problems };
  const draft = metadata.draft as TrialMetadata;
  const layoutBytes = files.get('layout.csv');
  // Faults of a layout or harvest that stand there already are the check's to tell.
  const quiet = (): void => undefined;
  const layout =
    layoutBytes === undefined ? fullGrid(metadata, quiet) : readLayout(layoutBytes, metadata, quiet);
  const harvestBytes = files.get('harvest.csv');
  const harvest = harvestBytes === undefined ? null : readHarvest(harvestBytes, metadata, layout, quiet);
  const filled = (harvest?.records ?? []).filter(({ values }) =>
    Object.values(values).some((value) => value !== null),
  );
  const isLaidOut = layoutBytes !== undefined || (draft.factors ?? []).length === 0 || layout.treated;
  const target: Target = {
    id,
    files,
    known: knownTrial(draft),
    metadata: draft,
    positions: isLaidOut ? layout.positions : null,
    filled: filled.length,
  };
  return { target, problems: [] };
}
