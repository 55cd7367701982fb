/** `import`: brings a grower's own spreadsheet into a trial's folder, and says what becomes of every cell. */
import { existsSync, statSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { checkTrial } from '../check/check-trial.ts';
import { compareProblems } from '../check/print-problem.ts';
import { bringIn, type Destination, type Given, type Intake } from '../intake/bring-in.ts';
import { corrected } from '../intake/corrections.ts';
import { newTrial } from '../intake/known.ts';
import { openTarget } from '../intake/open-target.ts';
import { proposals } from '../intake/proposals.ts';
import type { Proposal } from '../intake/propose-mapping.ts';
import { whyNotRead } from '../intake/why-not-read.ts';
import { withSources } from '../intake/with-sources.ts';
import { hasError } from '../model/problem.ts';
import { readTrialFolder } from '../read/folder.ts';
import { sha256 } from '../read/sha256.ts';
import { readWorkbook } from '../read/workbook.ts';
import { report } from './check.ts';
import { importOptions, type ImportOptions } from './import-options.ts';
import { intakeReport, mappingReport } from './import-report.ts';
import { contextOf, today } from './load-content.ts';
import { wrongUse } from './usage.ts';

export async function run(args: string[]): Promise<number> {
  const options = importOptions(args);
  const given = await givenOf(options.file);
  if (typeof given === 'string') {
    process.stderr.write(`${options.file.slice(0, 200)}: ${given}\n`);
    return 1;
  }
  const folder = options.folder === null ? null : resolve(options.folder);
  const destination = await destinationOf(folder, options);
  if (destination === null) return 1;
  const chosen = mappingsOf(given, destination, options);
  for (const { mapping, guesses } of chosen) {
    const sheet = given.workbook.sheets.find(({ name }) => name === mapping.sheet)!;
    process.stdout.write(mappingReport(sheet, mapping, guesses));
  }
  const mappings = chosen.map(({ mapping }) => mapping);
  const intake = bringIn(given, mappings, destination);
  process.stdout.write(intakeReport(intake));
  if (intake.files === null) {
    process.stderr.write(`${report(intake.problems)}Nothing is written.\n`);
    return 1;
  }
  return await finish(intake, folder, destination, options);
}

/** The spreadsheet, or why it cannot be read. */
async function givenOf(path: string): Promise<Given | string> {
  const file = resolve(path);
  if (!existsSync(file)) throw wrongUse(`There is no file "${path.slice(0, 200)}".`);
  if (!statSync(file).isFile())
    throw wrongUse(`"${path.slice(0, 200)}" is no file; a spreadsheet is expected.`);
  const bytes = new Uint8Array(await readFile(file));
  const workbook = readWorkbook(bytes);
  if (typeof workbook === 'string') return whyNotRead(workbook);
  return { name: basename(file), bytes, sha256: sha256(bytes), workbook };
}

/** The trial's folder, or a new one; null where what stands there cannot take a harvest. */
async function destinationOf(folder: string | null, { answers }: ImportOptions): Promise<Destination | null> {
  if (folder === null || !existsSync(join(folder, 'trial.yaml'))) {
    if (folder !== null && existsSync(folder) && !statSync(folder).isDirectory())
      throw wrongUse(`"${folder.slice(0, 200)}" is a file; a folder is expected.`);
    return { answers: answers(), today: today() };
  }
  const { target, problems } = openTarget(basename(folder), await readTrialFolder(folder));
  if (target !== null) return { target };
  process.stderr.write(
    `${report(problems)}trial.yaml has to say first what stands where and what is weighed.\n`,
  );
  return null;
}

function mappingsOf({ workbook }: Given, destination: Destination, options: ImportOptions): Proposal[] {
  const known = 'target' in destination ? destination.target.known : newTrial;
  const remembered = 'target' in destination ? (destination.target.metadata.sources ?? []) : [];
  const names = workbook.sheets.map(({ name }) => name);
  for (const name of options.sheets)
    if (!names.includes(name))
      throw wrongUse(`There is no sheet "${name.slice(0, 100)}"; the sheets are ${names.join(', ')}.`);
  const found = proposals(workbook, known, remembered);
  const wanted = names.filter((name) =>
    options.sheets.length > 0
      ? options.sheets.includes(name)
      : found.some(({ mapping }) => mapping.sheet === name),
  );
  if (!options.isCorrected) return found.filter(({ mapping }) => wanted.includes(mapping.sheet));
  const only = wanted.length > 0 ? wanted : names.slice(0, 1);
  if (only.length > 1)
    throw wrongUse(`Several sheets have a table (${only.join(', ')}): say with --sheet which one is meant.`);
  return only.map((name) => {
    const proposal = found.find(({ mapping }) => mapping.sheet === name);
    const sheet = workbook.sheets.find((one) => one.name === name)!;
    const mapping = corrected(sheet, proposal?.mapping ?? null, options.corrections, known);
    if ('fault' in mapping) throw wrongUse(`${mapping.fault}.`);
    return { mapping, guesses: [] };
  });
}

/** Writes where that was asked for, and says what the check thinks of the folder then. */
async function finish(
  { files, rows }: Intake,
  folder: string | null,
  destination: Destination,
  { write, replace }: ImportOptions,
): Promise<number> {
  const before = 'target' in destination ? destination.target.files : new Map<string, Uint8Array>();
  const after = new Map([...before, ...files!]);
  const id = folder === null ? 'own-trial' : basename(folder);
  const context = folder === null ? { cultivars: null, today: today(), prefix: '' } : await contextOf(folder);
  const { problems } = checkTrial(id, after, context);
  process.stderr.write(report(withSources(problems, rows).sort(compareProblems)));
  if (!write) {
    process.stdout.write(
      'Nothing is written yet: name a folder and add --write, or correct how a column is read.\n',
    );
    return 0;
  }
  if (folder === null) throw wrongUse("--write needs the trial's folder behind the spreadsheet.");
  if ('target' in destination && destination.target.filled > 0 && !replace)
    throw wrongUse('harvest.csv has values already: add --replace where they are to give way.');
  for (const [path, bytes] of files!) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), bytes);
  }
  process.stdout.write(`Written: ${[...files!.keys()].join(', ')}.\n`);
  return hasError(problems) ? 1 : 0;
}
