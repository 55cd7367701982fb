import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { listTrials, readContentFiles, readTrialFolder } from '../../src/read/folder.ts';

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
