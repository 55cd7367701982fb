import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { foreignOutput } from '../../src/commands/foreign-output.ts';
import { runCommand } from '../support/site.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tankside-output-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

it('leaves a folder of other files as it is, and says so', async () => {
  const notes = join(folder, 'notes.txt');
  await writeFile(notes, 'weighed on the 20th');
  const { code, stderr } = await runCommand(['build'], { TANKSIDE_OUT: folder });
  expect(stderr).toBe(
    `Nothing was published: "${folder}" holds files that are no site built before, and a build would take their place; name a new or empty folder in TANKSIDE_OUT.\n`,
  );
  expect(code).toBe(1);
  expect(await readFile(notes, 'utf8')).toBe('weighed on the 20th');
});

it('never takes the place of the trials, nor of what they lie in', async () => {
  const trials = join(folder, 'garden', 'trials');
  await mkdir(trials, { recursive: true });
  for (const name of ['index.html', '404.html']) await writeFile(join(folder, name), '');
  for (const output of [folder, join(folder, 'garden')])
    expect(foreignOutput(output, [join(folder, 'garden')])).toContain('holds what the site is made of');
  await symlink(folder, `${folder}-link`);
  try {
    expect(foreignOutput(`${folder}-link`, [join(folder, 'garden')])).toContain(
      'holds what the site is made of',
    );
  } finally {
    await rm(`${folder}-link`);
  }
});

it('refuses a file', async () => {
  const file = join(folder, 'dist');
  await writeFile(file, '');
  expect(foreignOutput(file, [])).toContain('is a file');
});

it('takes a new folder, an empty one and a site built before', async () => {
  expect(foreignOutput(join(folder, 'new'), [])).toBeNull();
  expect(foreignOutput(folder, [])).toBeNull();
  await mkdir(join(folder, 'data'));
  for (const name of ['index.html', '404.html', 'data/index.json', 'CNAME'])
    await writeFile(join(folder, name), '');
  expect(foreignOutput(folder, [])).toBeNull();
});
