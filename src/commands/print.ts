/** `print`: the PDF of a trial's fact sheet, weighing sheets or pot labels, printed from its page as a build makes it. */
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import { releaseDay } from '../publish/dataset.ts';
import { findBrowser } from './browser.ts';
import { run as build } from './build.ts';
import { contentFolder } from './folders.ts';
import { loadContent } from './load-content.ts';
import { type Paper, startPrinter } from './printer.ts';
import { wrongUse } from './usage.ts';
import { writeAsSite } from './write-as-site.ts';

export const noBrowser = (): string =>
  say(
    'Printing needs a Chromium, Chrome or Edge, and none was found. Install one, or set CHROME_PATH to where one is.',
  );

/** What of a trial can be printed. */
const printed = ['fact-sheet', 'weighing-sheets', 'labels'] as const;
type Printed = (typeof printed)[number];

/** The pages under the trial's own. */
const addresses: Readonly<Record<Printed, string>> = {
  'fact-sheet': 'fact-sheet',
  'weighing-sheets': 'weighing-sheet',
  labels: 'labels',
};

export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      paper: { type: 'string', default: 'a4' },
      out: { type: 'string' },
      of: { type: 'string', default: 'fact-sheet' },
      grid: { type: 'string' },
    },
  });
  const { paper, out } = values;
  const of = printed.find((each) => each === values.of);
  if (of === undefined) throw wrongUse(`--of is ${printed.join(', ')}; found "${values.of.slice(0, 60)}".`);
  if (paper !== 'letter' && paper !== 'a4')
    throw wrongUse(`--paper is letter or a4; found "${paper.slice(0, 60)}".`);
  const query = of === 'labels' ? gridQuery(values.grid ?? '3x8', paper) : '';
  if (values.grid !== undefined && of !== 'labels') throw wrongUse('--grid is for --of labels.');
  const { content, id } = asked(positionals);
  await writeAsSite(content);
  const browser = findBrowser();
  if (browser === undefined) {
    process.stderr.write(`${noBrowser()}\n`);
    return 1;
  }
  const { site, trials } = await loadContent(content);
  const trial = trials.find((each) => each.id === id);
  const missing = trial === undefined ? null : missingOf(of, trial);
  if (missing !== null) {
    process.stderr.write(`${missing}\n`);
    return 1;
  }
  const path = resolve(out ?? `${id}-${of}-${paper}.pdf`);
  const folder = await mkdtemp(join(tmpdir(), 'tankside-print-'));
  try {
    process.env['TANKSIDE_CONTENT'] = content;
    process.env['TANKSIDE_OUT'] = join(folder, 'site');
    process.env['TANKSIDE_PDF'] = '';
    const code = await build([]);
    if (code !== 0 || trial === undefined || site === null) return 1;
    const pdf = await pdfOf(
      browser,
      join(folder, 'site'),
      site.url,
      `trials/${id}/${addresses[of]}/${query}`,
      paper,
      releaseDay(trial.metadata),
    );
    await writeFile(path, pdf);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
  process.stderr.write(`${say('Printed {path}', { path })}\n`);
  return 0;
}

/** Why a trial has no such page; null where it has. */
function missingOf(of: Printed, { id, metadata, factSheets }: Trial): string | null {
  if (of === 'fact-sheet')
    return factSheets === undefined
      ? say('{id} has no factsheet.mdx; `sheet` writes a first one.', { id })
      : null;
  return metadata.status === 'finished'
    ? say('{id} is finished, so nothing is left to be weighed or labelled.', { id })
    : null;
}

/** Labels across and down the page, and the height that the paper leaves them between its margins, in mm. */
function gridQuery(text: string, paper: Paper): string {
  const [, across, down] = /^([1-9]\d?)x([1-9]\d?)$/.exec(text) ?? [];
  if (across === undefined || down === undefined || Number(across) > 12 || Number(down) > 40)
    throw wrongUse(
      `--grid is labels across x down the page, up to 12x40, such as 3x8; found "${text.slice(0, 60)}".`,
    );
  const height = paper === 'a4' ? 260 : 240;
  return `?across=${across}&down=${down}&height=${String(height)}`;
}

/** A trial's folder within a content folder, or its name in the content folder of the command. */
function asked(positionals: readonly string[]): { content: string; id: string } {
  const [given, more] = positionals;
  if (given === undefined || more !== undefined)
    throw wrongUse('One trial is expected: its folder or its name.');
  const named = join(contentFolder(), 'trials', given);
  const folder = /^[a-z0-9-]+$/.test(given) && existsSync(named) ? named : resolve(given);
  if (!existsSync(join(folder, 'trial.yaml'))) throw wrongUse(`There is no trial "${given.slice(0, 200)}".`);
  const content = resolve(folder, '..', '..');
  if (!existsSync(join(content, 'site.yaml')))
    throw wrongUse(
      'The trial has to lie in trials/ of a content folder with a site.yaml, whose address is printed.',
    );
  return { content, id: basename(folder) };
}

async function pdfOf(
  browser: string,
  folder: string,
  url: string,
  path: string,
  paper: Paper,
  day: string,
): Promise<Buffer> {
  const printer = await startPrinter(browser, folder, url);
  try {
    return await printer.pdf(url.replace(/\/*$/, '/') + path, paper, day);
  } finally {
    await printer.close();
  }
}
