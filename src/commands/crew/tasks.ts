/** What another thread can be given to do: one trial at a time, with all that it takes handed over by value. */
import { basename, join } from 'node:path';
import { type CheckContext, type CheckedTrial, checkTrial } from '../../check/check-trial.ts';
import { computeFindings } from '../../compute/findings.ts';
import type { Findings } from '../../model/findings.ts';
import { inLanguage, type Language } from '../../model/language.ts';
import '../../model/messages.ts';
import type { SiteSettings, TrialWithFindings } from '../../model/library.ts';
import { type FileFacts, fileFacts } from '../../publish/file-facts.ts';
import { publishedFiles } from '../../publish/trial-files.ts';
import { readTrialFolder } from '../../read/folder.ts';
import { writeAll } from '../write-all.ts';

/** A trial's folder to be read, checked and computed. */
export interface FolderToExamine {
  folder: string;
  context: CheckContext;
  /** That of the site, in which problems and findings are said. */
  language: Language;
  /** Whether the findings of a finished trial are to be computed. */
  withFindings: boolean;
}

export interface Examined extends CheckedTrial {
  /** Null where they were not computed, the trial is not finished, or it has an error. */
  findings: Findings | null;
}

/** Reads and checks a trial's folder, and computes what a finished trial supports. */
export async function examine(given: FolderToExamine): Promise<Examined> {
  const { folder, context, language, withFindings } = given;
  const files = await readTrialFolder(folder);
  return inLanguage(language, () => {
    const checked = checkTrial(basename(folder), files, context);
    const { trial } = checked;
    const findings = withFindings && trial?.metadata.status === 'finished' ? computeFindings(trial) : null;
    return { ...checked, findings };
  });
}

/** A trial whose dataset is to be written below the site's folder. */
export interface DatasetToWrite {
  item: TrialWithFindings;
  site: SiteSettings;
  language: Language;
  output: string;
}

/** Makes and writes the files of a trial's dataset, and tells what they are. */
export function writeDataset({ item, site, language, output }: DatasetToWrite): Promise<FileFacts[]> {
  const alone = { site, cultivars: [], trials: [item], problems: [] };
  const files = inLanguage(language, () => publishedFiles(item, alone));
  writeAll(join(output, 'data', item.trial.id), files);
  return Promise.resolve(files.map(fileFacts));
}

export const tasks = { examine, writeDataset };
export type Tasks = typeof tasks;
