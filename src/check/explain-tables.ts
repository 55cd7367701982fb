import type { Problem } from '../model/problem.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import { exchangedReadings, slipsOf } from './column-slips.ts';
import { companionForm, harvestForm } from './csv-form.ts';
import { isAccepted } from './containers-in-one.ts';
import type { Metadata } from './facts.ts';
import type { Report } from './rule.ts';
import { bytesOf, cellsOf } from './table-edits.ts';

const tables = ['layout.csv', 'harvest.csv', 'readings.csv'] as const;

/** From so many faults on in one table, one slip that explains them is looked for; two do beside an empty cell. */
const several = 3;
const fewest = 2;
/** A slip explains them where it leaves at most this share of them in the folder. */
const mostLeft = 0.1;
/** So many rows are read anew, over all slips that are tried, before a table is too large for it. */
const mostRows = 40_000;

/**
 * Tells problems of a table that one slip of whole columns explains as that slip, in their place: two headings exchanged, a
 * column moved by a row, a column written in the first row of each run alone. Each is tried by checking the folder
 * without it, so that only what leaves nothing to find is said.
 *
 * @param problems is changed
 * @param check the problems of a folder with other tables
 */
export function explainTables(
  files: FolderFiles,
  problems: Problem[],
  metadata: Metadata,
  prefix: string,
  report: Report,
  check: (files: FolderFiles) => Problem[],
): void {
  let [left, now] = [problems, files];
  const told: ((report: Report) => void)[] = [];
  for (const file of tables) {
    const bytes = now.get(file);
    const own = (all: readonly Problem[]): Problem[] => all.filter((one) => one.file === prefix + file);
    const errors = own(left).filter(({ severity }) => severity === 'error');
    // Where the headings are at fault, the rows were not read.
    if (bytes === undefined || errors.some(({ line }) => line === 1)) continue;
    const form = file === 'harvest.csv' ? harvestForm(metadata) : companionForm(metadata, bytes);
    const isOdd = errors.length === 0 && own(left).some((one) => isUnlikely(one, metadata));
    const cells = errors.length > 0 || isOdd ? cellsOf(file, bytes, form) : null;
    if (cells === null) continue;
    const isAtFault = (line: number | null): boolean =>
      line !== null && errors.some((one) => one.line === line);
    const slips = isOdd
      ? exchangedReadings(cells)
      : slipsOf(file, cells, metadata).filter(
          ({ empty }) => errors.length >= several || (left.length >= fewest && isAtFault(empty)),
        );
    if (slips.length * cells.rows.length > mostRows) continue;
    const explaining = slips.flatMap((slip) => {
      const mended = new Map(now).set(file, bytesOf(slip.mended));
      const after = check(mended).filter(
        (one) => !own([one]).some(({ line }) => line !== null && line === slip.lost),
      );
      const isLeft = own(after).some(({ severity }) => isOdd || severity === 'error');
      if (isLeft || after.length > left.length * mostLeft) return [];
      // Without what was added, or the rain, a level seems to rise: that is no fault left.
      const isFault = ({ severity }: Problem): boolean =>
        file !== 'readings.csv' || isOdd || severity === 'error';
      const isOne = slip.notAlone.some(
        (one) => !own(check(new Map(now).set(file, bytesOf(one)))).some(isFault),
      );
      return isOne ? [] : [{ slip, mended, after }];
    });
    const evident = explaining.filter(({ slip }) => isAtFault(slip.empty));
    const likely = evident.length > 0 ? evident : explaining;
    const least = Math.min(...likely.map(({ after }) => after.length));
    const [best, other] = likely.filter(({ after }) => after.length === least);
    // Where two slips explain them, neither is said.
    if (best === undefined || other !== undefined) continue;
    told.push(best.slip.tell);
    [left, now] = [best.after, best.mended];
  }
  if (told.length === 0) return;
  problems.splice(0, problems.length, ...left);
  for (const tell of told) tell(report);
}

/** Readings that no solution has, which no error tells of; not where the grower lets them stand. */
function isUnlikely({ rule }: Problem, metadata: Metadata): boolean {
  return rule === 'reading-unlikely' && !isAccepted(metadata, rule);
}
