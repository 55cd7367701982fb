import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { inPlainWords } from '../../src/commands/in-plain-words.ts';
import { runCommand } from '../support/site.ts';

const fault = (values: object): Error => Object.assign(new Error('system text'), values);

it('says what the machine reports by a code', () => {
  expect(inPlainWords(fault({ code: 'ENOSPC', path: '/a', dest: '/b/c' }))).toBe(
    'the disk is full: "/b/c" could not be written. Make room, then try again.',
  );
  expect(inPlainWords(fault({ code: 'EROFS', path: '/b' }))).toBe(
    '"/b" cannot be written: the disk is read-only. Take another folder.',
  );
  expect(inPlainWords(fault({ code: 'EACCES', syscall: 'listen', port: 80 }))).toContain('from 1024 on');
});

it('leaves a fault that it does not know to others', () => {
  expect(inPlainWords(new Error('odd'))).toBeNull();
  expect(inPlainWords(fault({ code: 'EODD' }))).toBeNull();
});

it('is what a build says that is sent to a folder inside a file', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-words-'));
  try {
    await writeFile(
      join(folder, 'site.yaml'),
      'title: Trials at Fernhollow\nurl: https://trials.example.org/\npublisher: Fernhollow\nlicence: CC0-1.0\n',
    );
    await writeFile(join(folder, 'file'), '');
    const { code, stderr } = await runCommand(['build'], {
      TANKSIDE_CONTENT: folder,
      TANKSIDE_OUT: join(folder, 'file', 'dist'),
    });
    expect(stderr).toContain(
      `Tankside stopped: "${join(folder, 'file')}" cannot be made: a file stands where a folder is needed.`,
    );
    expect(code).toBe(1);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
});
