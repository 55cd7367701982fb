/** `sheet`: writes a first factsheet.mdx from a finished trial, and never over one that is there. */
import { writeFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { checkCultivars, checkSite } from '../check/check-content.ts';
import { checkTrial } from '../check/check-trial.ts';
import { siteFindings } from '../compute/site-findings.ts';
import type { Library } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import { readContentFiles, readTrialFolder } from '../read/folder.ts';
import { sheetTemplate } from '../sheets/template/sheet-template.ts';
import { report } from './check.ts';
import { folderArgument } from './folder-argument.ts';
import { unnamed } from './library-of.ts';
import { contextOf } from './load-content.ts';

export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { print: { type: 'boolean', default: false } },
  });
  const folder = folderArgument(positionals);
  const context = { ...(await contextOf(folder)), withoutSheets: true };
  const { trial, problems } = checkTrial(basename(folder), await readTrialFolder(folder), context);
  if (trial === null) {
    process.stderr.write(report(problems));
    return 1;
  }
  const text = await firstSheet(trial, folder);
  if (text === null) {
    const why =
      trial.metadata.status === 'planned'
        ? say('The trial is planned: there is nothing to tell until it is finished.')
        : say('The trial is growing: there is nothing to tell until it is finished.');
    process.stderr.write(`${why}\n`);
    return 1;
  }
  if (values.print) {
    process.stdout.write(text);
    return 0;
  }
  return await writeNew(join(folder, 'factsheet.mdx'), text);
}

/** The sheet in the language of the site that the trial lies in; null where the trial is not finished. */
async function firstSheet(trial: Trial, folder: string): Promise<string | null> {
  const shared = await readContentFiles(resolve(folder, '..', '..'));
  const site = shared.site === null ? null : checkSite(shared.site).value;
  const cultivars = shared.cultivars === null ? null : checkCultivars(shared.cultivars).value;
  const [item] = siteFindings([trial]);
  const { findings } = item!;
  if (findings === null) return null;
  const library: Library = {
    site: site ?? unnamed,
    cultivars: cultivars ?? [],
    trials: [item!],
    problems: [],
  };
  return sheetTemplate({ trial, findings }, library);
}

async function writeNew(path: string, text: string): Promise<number> {
  try {
    await writeFile(path, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    process.stderr.write(
      `${say('factsheet.mdx is there already and stays as it is; --print shows what would be written.')}\n`,
    );
    return 1;
  }
  process.stderr.write(`${say('Wrote {path}: read it, make the words yours, then run check.', { path })}\n`);
  return 0;
}
