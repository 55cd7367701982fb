import type { Problem } from '../model/problem.ts';
import type { CheckedTaken } from './check-taken.ts';
import { checkTrial } from './check-trial.ts';
import { folderOfTable, type TableAnswers } from './folder-of-table.ts';
import { passedOver, readTableAlone } from './table-alone.ts';

/** What became of a table of weights that came without its trial's folder. */
export type CheckedTable =
  | { checked: CheckedTaken; /** Headings that were not used. */ unused: readonly string[] }
  | { faults: readonly string[] };

const id = 'own-trial';

/**
 * Checks a table that stands for a whole trial, by the rules of every trial.
 *
 * @param today year-month-day
 */
export function checkTable(bytes: Uint8Array, answers: TableAnswers, today: string): CheckedTable {
  const table = readTableAlone(bytes);
  if ('lacks' in table) return { faults: table.lacks };
  const { files, faults } = folderOfTable(bytes, table, answers);
  if (faults.length > 0) return { faults: faults.slice(0, mostFaults) };
  const context = { cultivars: null, today, prefix: '', alsoInHarvest: passedOver(table) };
  const { trial, problems } = checkTrial(id, files, context);
  const checked = {
    kind: 'trial',
    names: [id],
    trials: trial === null ? [] : [trial],
    cultivars: [],
    factSheets: [],
    problems: problems.filter(isOfTable),
    bytesOf: (file: string) => files.get(file),
  } as const;
  return { checked, unused: table.unused };
}

const mostFaults = 5;

/** No reader can mend what was written for them, save where it keeps the trial from being read. */
function isOfTable({ file, severity }: Problem): boolean {
  return file === 'harvest.csv' || severity === 'error';
}
