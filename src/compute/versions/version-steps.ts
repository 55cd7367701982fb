import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Release, Trial } from '../../model/trial.ts';
import { computeFindings } from '../findings.ts';
import { levelNames } from '../format/level-names.ts';
import { type CellChange, changedCells } from './changed-cells.ts';
import { type MovedFigure, movedFigures } from './moved-figures.ts';

/** A release of a trial beside what changed since the frozen version before it. */
export interface VersionStep {
  release: Release;
  /** The version it is compared with; null for the first, and where this one was not frozen. */
  since: string | null;
  changes: readonly CellChange[];
  figures: readonly MovedFigure[];
  /** Why nothing is compared, or null. */
  reason: string | null;
}

/** The releases of a finished trial, the newest first, each with the cells and figures that it changed. */
export function versionSteps(
  trial: Trial,
  findings: Findings,
  cultivars: readonly Cultivar[],
): VersionStep[] {
  const earlier = trial.earlier ?? [];
  const steps: VersionStep[] = [];
  let before: { trial: Trial; findings: Findings } | null = null;
  for (const [index, release] of (trial.metadata.releases ?? []).entries()) {
    const isPresent = release.version === trial.metadata.version;
    const frozen = earlier.find(({ version }) => version === release.version);
    const now: Trial | null = isPresent ? trial : (frozen?.trial ?? null);
    if (now === null) {
      const reason =
        frozen === undefined
          ? say('Its files were not frozen, so that its changes are shown with those of the next.')
          : say('By the rules of today its files hold an error, so that they are not compared.');
      steps.push({ release, since: null, changes: [], figures: [], reason });
      continue;
    }
    const found: Findings | null = isPresent ? findings : findingsOf(now);
    const names = (one: Trial) => levelNames(one, cultivars);
    const changes = before === null ? [] : changedCells(before.trial, now);
    const figures: MovedFigure[] =
      before === null || found === null
        ? []
        : movedFigures(
            { ...before, names: names(before.trial) },
            { trial: now, findings: found, names: names(now) },
          );
    const reason =
      before === null && index > 0 ? say('No version before it was frozen to compare it with.') : null;
    steps.push({ release, since: before?.trial.metadata.version ?? null, changes, figures, reason });
    if (found !== null) before = { trial: now, findings: found };
  }
  return steps.reverse();
}

const findingsOf = (trial: Trial): Findings | null =>
  trial.metadata.status === 'finished' ? computeFindings(trial) : null;
