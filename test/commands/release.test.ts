import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { withRelease } from '../../src/read/release-text.ts';
import { root } from '../../src/commands/folders.ts';
import { runCommand } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const today = { TANKSIDE_TODAY: '2026-11-25' };

/** A copy of a demo trial in a content folder of its own, with what stands in one of its files. */
async function copyOf(id: string) {
  const content = await temporaryFolder();
  await cp(join(root, 'content'), content, { recursive: true });
  const folder = join(content, 'trials', id);
  return {
    folder,
    read: (name: string) => readFile(join(folder, name), 'utf8'),
    change: async (name: string, from: string | RegExp, to: string | ((...found: string[]) => string)) => {
      const text = await readFile(join(folder, name), 'utf8');
      const changed = text.replace(from, typeof to === 'string' ? () => to : to);
      expect(changed).not.toBe(text);
      await writeFile(join(folder, name), changed);
    },
    release: (...more: string[]) => runCommand(['release', folder, ...more], today),
    check: () => runCommand(['check', folder], today),
  };
}

describe('release', () => {
  test('freezes the version as it stands first, with its checksums, and changes nothing else', async () => {
    const trial = await copyOf('four-lettuces-2024');
    const before = await trial.read('trial.yaml');
    const { code, stdout } = await trial.release('--note', 'First.');
    expect([code, stdout]).toEqual([0, expect.stringContaining('1.0.0 is now frozen') as string]);
    expect(await trial.read('trial.yaml')).toBe(before);
    expect(await trial.read('versions/1.0.0/harvest.csv')).toBe(await trial.read('harvest.csv'));
    expect(await trial.read('versions/1.0.0/SHA256SUMS')).toMatch(/^[0-9a-f]{64} {2}harvest\.csv\n/);
    expect((await trial.check()).stdout).toContain('0 errors');
  });

  test('raises minor for a weight, patch for words, major for what the numbers mean, and leaves comments be', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.release('--note', 'First.');
    await trial.change(
      'harvest.csv',
      /\n(T2,3,4,)(\d+)/,
      (_: string, place: string, weight: string) => `\n${place}${Number(weight) + 5}`,
    );
    expect((await trial.check()).stdout).toContain('unreleased-changes');
    const minor = await trial.release('--note', 'One plant weighed: "again".');
    expect([minor.code, minor.stderr]).toEqual([0, '']);
    expect(minor.stdout).toContain('1.1.0 is released (harvest.csv changed)');
    const text = await trial.read('trial.yaml');
    expect(text.split('\n')[0]).toMatch(/^# yaml-language-server/);
    expect(text).toMatch(/^version: 1\.1\.0\b/m);
    expect(text).toMatch(
      /- \{version: 1\.1\.0, date: 2026-11-25, note: "One plant weighed: \\"again\\"\."\}/,
    );
    expect((await trial.check()).stdout).toContain('0 errors');
    await trial.change('trial.yaml', /^title: .*$/m, 'title: Another title');
    expect((await trial.release('--note', 'Title.')).stdout).toContain('1.1.1 is released');
    await trial.change('trial.yaml', 'name: Fresh weight', 'name: Trimmed weight');
    expect((await trial.release('--note', 'Scale.')).stdout).toContain('2.0.0 is released');
    expect((await trial.release('--note', 'Again.', '--level', 'major')).code).toBe(1);
  });

  test('stops the check where a frozen version was altered or lost a file', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.release('--note', 'First.');
    await trial.change('versions/1.0.0/harvest.csv', /T1,1,1,\d+/, 'T1,1,1,999');
    const { code, stdout } = await trial.check();
    expect(code).toBe(1);
    expect(stdout).toMatch(
      /^versions\/1\.0\.0\/harvest\.csv {2}error {2}frozen-version {2}harvest\.csv of version 1\.0\.0 is altered/m,
    );
  });

  test('releases nothing with an error in the trial, without a note, or at a level that is none', async () => {
    const trial = await copyOf('four-lettuces-2024');
    expect((await trial.release()).code).toBe(2);
    expect((await trial.release('--note', 'x', '--level', 'huge')).code).toBe(2);
    await trial.change('trial.yaml', /^status: .*$/m, 'status: nearly');
    const { code, stderr } = await trial.release('--note', 'x');
    expect(code).toBe(1);
    expect(stderr).toContain('mend the errors');
  });
});

describe('the text of trial.yaml', () => {
  const release = { version: '1.1.0', date: '2026-11-25', note: 'Said.' };
  test.each([
    [
      'a list of one line each',
      'version: 1.0.0 # of the data\nreleases:\n  - {version: 1.0.0, date: 2025-11-02}\n',
    ],
    [
      'a list at the margin, more keys behind',
      'version: 1.0.0\nreleases:\n- version: 1.0.0\n  date: 2025-11-02\nevents: [] # none\n',
    ],
    ['Windows line ends', 'version: 1.0.0\r\nreleases:\r\n  - {version: 1.0.0, date: 2025-11-02}\r\n'],
    ['no list yet', 'title: x\nversion: "1.0.0"\n'],
  ])('with %s gets the version and the release, and keeps the rest', async (_, text) => {
    const { parse } = await import('yaml');
    const changed = withRelease(text, release)!;
    const value = parse(changed) as { version: string; releases: { version: string; note?: string }[] };
    expect(value.version).toBe('1.1.0');
    expect(value.releases.at(-1)).toEqual({ version: '1.1.0', date: '2026-11-25', note: 'Said.' });
    for (const kept of ['# of the data', '# none', 'date: 2025-11-02'].filter((part) =>
      text.includes(part),
    )) {
      expect(changed).toContain(kept);
    }
    expect(changed.includes('\r\n')).toBe(text.includes('\r\n'));
  });
});
