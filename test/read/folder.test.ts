import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { listTrials, readContentFiles, readTrialFolder, unreadOfContent } from '../../src/read/folder.ts';

let content = '';

beforeAll(() => {
  content = mkdtempSync(join(tmpdir(), 'content-'));
  mkdirSync(join(content, 'trials', 'b-trial', 'photos'), { recursive: true });
  mkdirSync(join(content, 'trials', 'a-trial'));
  mkdirSync(join(content, 'trials', '.hidden'));
  writeFileSync(join(content, 'trials', 'notes.txt'), 'x');
  writeFileSync(join(content, 'site.yaml'), 'title: x\n');
  writeFileSync(join(content, 'secret.txt'), 'x');
  const trial = join(content, 'trials', 'b-trial');
  writeFileSync(join(trial, 'trial.yaml'), 'title: x\n');
  writeFileSync(join(trial, '.DS_Store'), 'x');
  writeFileSync(join(trial, 'photos', 'one.jpg'), 'x');
  symlinkSync('one.jpg', join(trial, 'photos', 'two.jpg'));
  symlinkSync('../../../secret.txt', join(trial, 'photos', 'three.jpg'));
  symlinkSync('..', join(trial, 'photos', 'round'));
  symlinkSync('nowhere', join(trial, 'photos', 'gone.jpg'));
});

afterAll(() => {
  rmSync(content, { recursive: true, force: true });
});

describe('listTrials', () => {
  it('gives the folders in trials/, sorted, good or not', async () => {
    expect(await listTrials(content)).toEqual(['a-trial', 'b-trial']);
    expect(await listTrials(join(content, 'nowhere'))).toEqual([]);
  });
});

describe('readContentFiles', () => {
  it('gives bytes, and null for a file that is not there', async () => {
    const { site, cultivars } = await readContentFiles(content);
    expect(site?.length).toBe(9);
    expect(cultivars).toBeNull();
  });
});

describe('readTrialFolder', () => {
  it('reads regular files and links within the folder, and lists what it leaves out', async () => {
    const files = await readTrialFolder(join(content, 'trials', 'b-trial'));
    expect([...files.keys()]).toEqual(['photos/one.jpg', 'photos/two.jpg', 'trial.yaml']);
    expect(files.unread).toEqual([
      { path: 'photos/gone.jpg', reason: 'not readable' },
      { path: 'photos/three.jpg', reason: 'a link that leaves the folder' },
    ]);
  });

  it('has its left-out files reported by the check', async () => {
    const files = await readTrialFolder(join(content, 'trials', 'b-trial'));
    const { problems } = checkTrial('b-trial', files, {
      cultivars: null,
      today: '2026-01-15',
      prefix: 'trials/',
    });
    expect(problems.filter(({ rule }) => rule === 'unread-file').map(printProblem)).toEqual([
      'trials/b-trial/photos/gone.jpg  error  unread-file  "photos/gone.jpg" is not readable; mend or remove it',
      'trials/b-trial/photos/three.jpg  error  unread-file  "photos/three.jpg" is a link that leaves the folder; copy the file into the folder',
    ]);
  });
});

describe('unreadOfContent', () => {
  it('lists what cannot be read as what it should be, and a file or link astray among the trials', async () => {
    expect(await unreadOfContent(content)).toEqual([]);
    const wrong = mkdtempSync(join(tmpdir(), 'wrong-'));
    mkdirSync(join(wrong, 'cultivars.yaml'));
    symlinkSync('site.yaml', join(wrong, 'site.yaml'));
    writeFileSync(join(wrong, 'fact-sheets'), 'x');
    mkdirSync(join(wrong, 'trials', 'sound'), { recursive: true });
    writeFileSync(join(wrong, 'trials', 'trial.yaml'), 'x');
    writeFileSync(join(wrong, 'trials', 'notes.txt'), 'x');
    symlinkSync('nowhere', join(wrong, 'trials', 'moved'));
    expect(await unreadOfContent(wrong)).toEqual([
      { path: 'cultivars.yaml', reason: 'not a regular file' },
      { path: 'fact-sheets', reason: 'not a folder' },
      { path: 'site.yaml', reason: 'not readable' },
      { path: 'trials/moved', reason: 'not readable' },
      { path: 'trials/trial.yaml', reason: 'not in the folder of a trial' },
    ]);
    const { problems } = await loadContent(wrong);
    expect(problems.filter(({ rule }) => rule !== 'not-a-trial').map(printProblem)).toEqual([
      'cultivars.yaml  error  unread-file  "cultivars.yaml" is not a regular file; mend or remove it',
      'fact-sheets  error  unread-file  "fact-sheets" is not a folder; make it one, or remove it',
      'site.yaml  error  unread-file  "site.yaml" is not readable; mend or remove it',
      'trials/moved  error  unread-file  "trials/moved" is not readable; mend or remove it',
      'trials/trial.yaml  error  unread-file  "trials/trial.yaml" is not in the folder of a trial; make a folder for the trial beside it, and move the file there',
    ]);
    rmSync(wrong, { recursive: true });
  });
});
