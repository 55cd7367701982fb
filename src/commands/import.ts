/** `import`: brings a grower's own spreadsheet into a trial's folder, and says what becomes of every cell. */
import { existsSync, statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { bringIn, type Destination, type Given, type Intake } from '../intake/bring-in.ts';
import { corrected } from '../intake/corrections.ts';
import { newTrial } from '../intake/known.ts';
import { openTarget } from '../intake/open-target.ts';
import { proposals } from '../intake/proposals.ts';
import type { Proposal } from '../intake/propose-mapping.ts';
import { whyNotRead } from '../intake/why-not-read.ts';
import { say } from '../model/say.ts';
import { readTrialFolder } from '../read/folder.ts';
import { sha256 } from '../read/sha256.ts';
import { readWorkbook } from '../read/workbook.ts';
import { report } from './check.ts';
import { answerOf, help, question, together } from './import-answers.ts';
import { finish, isReplacing } from './import-finish.ts';
import { importOptions, type ImportOptions } from './import-options.ts';
import { intakeReport, mappingReport } from './import-report.ts';
import { contentFolder } from './folders.ts';
import { today } from './load-content.ts';
import { isYes } from './talk.ts';
import { isWrongUse, wrongUse } from './usage.ts';
import { writeAsSite } from './write-as-site.ts';

export async function run(args: string[]): Promise<number> {
  await writeAsSite(contentFolder());
  const options = importOptions(args);
  const folder = options.folder === null ? null : resolve(options.folder);
  // The site that the folder lies in may be another than the command's own.
  if (folder !== null) await writeAsSite(resolve(folder, '..', '..'));
  const given = await givenOf(options.file);
  if (typeof given === 'string') {
    process.stderr.write(`${options.file.slice(0, 200)}: ${given}\n`);
    return 1;
  }
  const destination = await destinationOf(folder, options);
  if (destination === null) return 1;
  const isAsked = process.stdin.isTTY && process.stdout.isTTY && !options.write;
  if (!isAsked) return await settle(shown(given, destination, options), folder, destination, options);
  const prompt = createInterface({ input: process.stdin, output: process.stdout });
  try {
    return await conversation(given, folder, destination, options, (text) => prompt.question(text));
  } finally {
    prompt.close();
  }
}

/** Shows how the spreadsheet is read, and what comes of it. */
function shown(given: Given, destination: Destination, options: ImportOptions): Intake {
  const chosen = mappingsOf(given, destination, options);
  for (const { mapping, guesses } of chosen) {
    const sheet = given.workbook.sheets.find(({ name }) => name === mapping.sheet)!;
    process.stdout.write(mappingReport(sheet, mapping, guesses));
  }
  const intake = bringIn(
    given,
    chosen.map(({ mapping }) => mapping),
    destination,
  );
  process.stdout.write(intakeReport(intake));
  return intake;
}

async function settle(
  intake: Intake,
  folder: string | null,
  destination: Destination,
  options: ImportOptions,
): Promise<number> {
  if (intake.files !== null) return await finish(intake, folder, destination, options);
  process.stderr.write(`${report(intake.problems)}${say('Nothing is written.')}\n`);
  return 1;
}

/** Shows, asks and shows again what was corrected, until it is written or left. */
export async function conversation(
  given: Given,
  folder: string | null,
  destination: Destination,
  told: ImportOptions,
  ask: (text: string) => Promise<string>,
): Promise<number> {
  const options = { ...told, isAsked: true };
  let { corrections, isCorrected } = options;
  let intake = shown(given, destination, options);
  let code = await settle(intake, folder, destination, options);
  for (;;) {
    const typed = await ask(question());
    const answer = answerOf(typed);
    if (answer === 'stop') return code;
    if (answer === 'write' && intake.files === null) {
      process.stdout.write(`${say('What is named above must be said or mended first.')}\n`);
      continue;
    }
    try {
      if (answer === 'write') {
        const replace = options.replace || (isReplacing(intake, folder, destination) && (await isSure(ask)));
        return await finish(intake, folder, destination, { ...options, write: true, replace });
      }
      if (answer === null) {
        process.stdout.write(help());
        continue;
      }
      const next = { ...options, corrections: together(corrections, answer), isCorrected: true };
      intake = shown(given, destination, next);
      code = await settle(intake, folder, destination, next);
      ({ corrections, isCorrected } = next);
    } catch (fault) {
      if (!isWrongUse(fault)) throw fault;
      process.stdout.write(`${fault.message}\n`);
      intake = shown(given, destination, { ...options, corrections, isCorrected });
    }
  }
}

async function isSure(ask: (text: string) => Promise<string>): Promise<boolean> {
  const answers = { yes: say('yes'), no: say('no') };
  return isYes(await ask(say('What is there already gives way. Replace it? {yes} or {no}: ', answers)));
}

/** The spreadsheet, or why it cannot be read. */
async function givenOf(path: string): Promise<Given | string> {
  const file = resolve(path);
  const shownPath = { file: path.slice(0, 200) };
  if (!existsSync(file)) throw wrongUse(say('There is no file "{file}".', shownPath));
  if (!statSync(file).isFile())
    throw wrongUse(say('"{file}" is no file; a spreadsheet is expected.', shownPath));
  const bytes = new Uint8Array(await readFile(file));
  const workbook = readWorkbook(bytes);
  if (typeof workbook === 'string') return whyNotRead(workbook);
  return { name: basename(file), bytes, sha256: sha256(bytes), workbook };
}

/** The trial's folder, or a new one; null where what stands there cannot take a harvest. */
async function destinationOf(folder: string | null, { answers }: ImportOptions): Promise<Destination | null> {
  if (folder === null || !existsSync(join(folder, 'trial.yaml'))) {
    if (folder !== null && existsSync(folder) && !statSync(folder).isDirectory())
      throw wrongUse(say('"{folder}" is a file; a folder is expected.', { folder: folder.slice(0, 200) }));
    return { answers: answers(), today: today() };
  }
  const { target, problems } = openTarget(basename(folder), await readTrialFolder(folder));
  if (target !== null) return { target };
  process.stderr.write(
    `${report(problems)}${say('trial.yaml has to say first what stands where and what is weighed.')}\n`,
  );
  return null;
}

function mappingsOf({ workbook }: Given, destination: Destination, options: ImportOptions): Proposal[] {
  const known = 'target' in destination ? destination.target.known : newTrial;
  const remembered = 'target' in destination ? (destination.target.metadata.sources ?? []) : [];
  const names = workbook.sheets.map(({ name }) => name);
  for (const name of options.sheets)
    if (!names.includes(name))
      throw wrongUse(
        say('There is no sheet "{sheet}"; the sheets are {sheets}.', {
          sheet: name.slice(0, 100),
          sheets: names.join(', '),
        }),
      );
  const found = proposals(workbook, known, remembered);
  const wanted = names.filter((name) =>
    options.sheets.length > 0
      ? options.sheets.includes(name)
      : found.some(({ mapping }) => mapping.sheet === name),
  );
  if (!options.isCorrected) return found.filter(({ mapping }) => wanted.includes(mapping.sheet));
  const only = wanted.length > 0 ? wanted : names.slice(0, 1);
  if (only.length > 1)
    throw wrongUse(
      say('Several sheets have a table ({sheets}): say with --sheet which one is meant.', {
        sheets: only.join(', '),
      }),
    );
  return only.map((name) => {
    const proposal = found.find(({ mapping }) => mapping.sheet === name);
    const sheet = workbook.sheets.find((one) => one.name === name)!;
    const mapping = corrected(sheet, proposal?.mapping ?? null, options.corrections, known);
    if ('fault' in mapping) throw wrongUse(`${mapping.fault}.`);
    return { mapping, guesses: [] };
  });
}
