/** Checks files beside the page, so that the page stays alive meanwhile: the command line's own check. */
import { checkTable } from '../../check/check-table.ts';
import { type CheckedTaken, checkTaken } from '../../check/check-taken.ts';
import type { TableAnswers } from '../../check/folder-of-table.ts';
import { readTableAlone } from '../../check/table-alone.ts';
import { siteFindings } from '../../compute/site-findings.ts';
import { type Language, writeIn } from '../../model/language.ts';
import type { Cultivar } from '../../model/library.ts';
import { takeIn } from '../../read/take-in.ts';
import type { GivenTrialWithFindings, Outcome } from './outcome.ts';
import { outcomeOf } from './outcome-of.ts';
import { type TableQuestions, questionsOf } from './table-questions.ts';
import { withSheets } from './with-sheets.ts';

/** What a page asks for. */
export interface CheckRequest {
  files: readonly { path: string; file: File }[];
  /** Year-month-day. */
  today: string;
  /** What the answer is written in: a worker sees no page to read it off. */
  language: Language;
  /** Cultivars to hold names against where no cultivars.yaml is among the files; null for none. */
  cultivars: readonly Cultivar[] | null;
  /** True where the trials themselves are wanted too. */
  withTrials: boolean;
  /** Whether a table alone may stand for a trial: no; yes, once it has been asked about; yes, with these answers. */
  table: 'no' | 'ask' | TableAnswers;
}

/** The answer: what was found; what must be asked of a table, or what it lacks; or that the check itself failed. */
export type CheckAnswer =
  | { outcome: Outcome; trials: readonly GivenTrialWithFindings[]; unused: readonly string[] }
  | { questions: TableQuestions }
  | { lacks: readonly string[] }
  | { fault: string };

self.addEventListener('message', ({ data }: MessageEvent<CheckRequest>) => {
  answer(data).then(
    (found) => self.postMessage(found),
    (error: unknown) => self.postMessage({ fault: String(error) } satisfies CheckAnswer),
  );
});

async function answer(request: CheckRequest): Promise<CheckAnswer> {
  const { files, today, language, cultivars, withTrials, table } = request;
  writeIn(language);
  if (language !== 'en') await import('../../model/meanings.ts');
  if (table !== 'no' && isTableAlone(files)) {
    const bytes = new Uint8Array(await files[0]!.file.arrayBuffer());
    if (table === 'ask') return questionsOf(readTableAlone(bytes));
    const checked = checkTable(bytes, table, today);
    return 'faults' in checked
      ? { lacks: checked.faults }
      : found(checked.checked, withTrials, checked.unused);
  }
  const given = files.map(({ path, file }) => ({
    path,
    size: file.size,
    arrayBuffer: () => file.arrayBuffer(),
  }));
  return found(checkTaken(await takeIn(given), today, cultivars), withTrials);
}

function isTableAlone(files: CheckRequest['files']): boolean {
  return files.length === 1 && /^[^/]+\.(csv|tsv|txt)$/i.test(files[0]!.path);
}

function found(taken: CheckedTaken, withTrials: boolean, unused: readonly string[] = []): CheckAnswer {
  const trials = siteFindings(taken.trials);
  const checked = withSheets(taken, trials);
  return { outcome: outcomeOf(checked, trials), trials: withTrials ? trials : [], unused };
}
