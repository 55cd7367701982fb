import type { Trial } from '../../model/trial.ts';
import { type CellChange, changedCells } from '../versions/changed-cells.ts';

/** The plan that a trial was published with, and what was done otherwise. */
export interface PlanKept {
  /** The version that was the plan. */
  version: string;
  changes: CellChange[];
}

/** Entries of trial.yaml that a plan promises. */
const promised = ['question', 'crop', 'factors', 'design', 'containers', 'variables', 'dates'];
/** What is known only once the work is done, and breaks no promise. */
const foundOnTheWay = /^(weighed_total|lot)\b/;

/**
 * What the trial does otherwise than its plan said: the newest frozen version that was `planned`, held against the
 * trial as it is. What the plan left open and was filled in later is no change of plan, except treatments and
 * positions that came in. Null where no plan was frozen.
 */
export function planKept(trial: Trial): PlanKept | null {
  const plan = (trial.earlier ?? []).findLast(({ trial: then }) => then?.metadata.status === 'planned');
  if (!plan?.trial || trial.metadata.status === 'planned') return null;
  const changes = changedCells(plan.trial, trial).filter(({ file, row, column, before }) => {
    if (file === 'layout.csv') return true;
    if (file !== 'trial.yaml' || foundOnTheWay.test(column)) return false;
    const [entry = ''] = row.split(' ');
    return promised.includes(entry) && (before !== null || entry === 'factors' || entry === 'containers');
  });
  return { version: plan.version, changes };
}
