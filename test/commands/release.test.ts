import { cp, readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../../src/commands/folders.ts';
import { raised } from '../../src/commands/release-words.ts';
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
  test('freezes a version that was never frozen as it stands, with its sums, and changes nothing else', async () => {
    const trial = await copyOf('four-lettuces-2024');
    const before = await trial.read('trial.yaml');
    const { code, stdout } = await trial.release();
    expect(code).toBe(0);
    expect(stdout).toBe(
      'Released 1.0.0 of four-lettuces-2024 (frozen as it stands).\n' +
        'Frozen in versions/1.0.0/: factsheet.mdx, harvest.csv, readings.csv, trial.yaml, SHA256SUMS.\n',
    );
    expect(await trial.read('trial.yaml')).toBe(before);
    for (const name of ['trial.yaml', 'harvest.csv', 'readings.csv'])
      expect(await trial.read(`versions/1.0.0/${name}`)).toBe(await trial.read(name));
    expect(await trial.read('versions/1.0.0/SHA256SUMS')).toMatch(
      /^[0-9a-f]{64} {2}factsheet\.mdx\n[0-9a-f]{64} {2}harvest\.csv\n/,
    );
    expect((await trial.check()).stdout).toContain('0 errors, 0 warnings, 0 notes');
  });

  test('raises minor for a weight, patch for words, major for what the numbers mean, and leaves comments be', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.release();
    await trial.change(
      'harvest.csv',
      /\n(T2,3,4,)(\d+)/,
      (_: string, place: string, weight: string) => `\n${place}${Number(weight) + 5}`,
    );
    expect((await trial.check()).stdout).toContain('unreleased-changes');
    const minor = await trial.release('--note', 'One plant weighed: "again".');
    expect([minor.code, minor.stderr]).toEqual([0, '']);
    expect(minor.stdout).toMatch(
      /^Released 1\.1\.0 of four-lettuces-2024 \(minor, by what changed since 1\.0\.0\)\.\n {2}harvest\.csv {2}T2 3 4 {2}fresh_weight {2}"\d+" -> "\d+"\n/,
    );
    const text = await trial.read('trial.yaml');
    expect(text.split('\n')[0]).toMatch(/^# yaml-language-server/);
    expect(text).toMatch(/^version: 1\.1\.0\b/m);
    expect(text).toMatch(
      /- \{version: 1\.1\.0, date: 2026-11-25, note: "One plant weighed: \\"again\\"\."\}/,
    );
    expect(await trial.read('versions/1.1.0/trial.yaml')).toBe(text);
    expect((await trial.check()).stdout).toContain('0 errors, 0 warnings, 0 notes');
    await trial.change('trial.yaml', /^title: .*$/m, 'title: Another title');
    expect((await trial.release('--note', 'Title.')).stdout).toContain('Released 1.1.1 ');
    await trial.change('trial.yaml', 'of: plant', 'of: pot');
    expect((await trial.release('--note', 'Pots, not plants.')).stdout).toContain('Released 2.0.0 ');
    const again = await trial.release('--note', 'Again.', '--level', 'major');
    expect([again.code, again.stderr]).toEqual([
      1,
      'Nothing changed since version 2.0.0, so there is nothing to release.\n',
    ]);
    expect((await readdir(join(trial.folder, 'versions'))).sort()).toEqual([
      '1.0.0',
      '1.1.0',
      '1.1.1',
      '2.0.0',
    ]);
  });

  test('raises by the level asked for', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.release();
    await trial.change('trial.yaml', /^title: .*$/m, 'title: Another title');
    const { stdout } = await trial.release('--note', 'Title.', '--level', 'major');
    expect(stdout).toContain('Released 2.0.0 of four-lettuces-2024 (major, as asked).');
  });

  test('compares with the newest frozen version where the present one was not frozen', async () => {
    const trial = await copyOf('autumn-lettuce-2025');
    await trial.change('harvest.csv', 'T1,1,1,1,', 'T1,1,1,1,1');
    await trial.change('trial.yaml', '1251', '2251');
    const { code, stdout, stderr } = await trial.release('--note', 'First plant of T1.');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('Released 1.2.0 of autumn-lettuce-2025 (minor, by what changed since 1.0.0).');
    expect(stdout).toContain('  harvest.csv  T3 2 2  fresh_weight  "107" -> "170"\n');
  });

  test('takes minor where nothing was ever frozen, and says so', async () => {
    const trial = await copyOf('four-lettuces-2024');
    const { stdout } = await trial.release('--note', 'One weight.');
    expect(stdout).toContain(
      'Released 1.1.0 of four-lettuces-2024 (minor, as no version was frozen that it could be compared with; --level sets another).',
    );
  });

  test('writes the first release of a trial that has none', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.change('trial.yaml', /^releases:\n(?: .*\n)+/m, '');
    const { code, stdout, stderr } = await trial.release('--note', 'First release.');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toContain('Released 1.0.0 of four-lettuces-2024 (the first release).');
    expect(await trial.read('trial.yaml')).toMatch(
      /\nreleases:\n {2}- \{version: 1\.0\.0, date: 2026-11-25, note: "First release\."\}\n$/,
    );
  });

  test('stops the check where a frozen version was altered, and releases nothing then', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.release();
    await trial.change('versions/1.0.0/harvest.csv', /T1,1,1,\d+/, 'T1,1,1,999');
    const { code, stdout } = await trial.check();
    expect(code).toBe(1);
    expect(stdout).toMatch(/^versions\/1\.0\.0\/harvest\.csv {2}error {2}frozen-version-altered {2}/m);
    const { code: released, stderr } = await trial.release('--note', 'x');
    expect([released, stderr]).toEqual([1, expect.stringContaining('frozen-version-altered')]);
    expect(await readdir(join(trial.folder, 'versions'))).toEqual(['1.0.0']);
  });

  test('writes nothing with an error in the trial, before it is finished, without a note, or at a level that is none', async () => {
    const trial = await copyOf('four-lettuces-2024');
    await trial.release();
    const before = await trial.read('trial.yaml');
    expect((await trial.release()).code).toBe(2);
    expect((await trial.release('--note', ' ')).code).toBe(2);
    expect((await trial.release('--note', 'x', '--level', 'huge')).code).toBe(2);
    await trial.change('trial.yaml', /^status: .*$/m, 'status: nearly');
    const wrong = await trial.release('--note', 'x');
    expect(wrong.code).toBe(1);
    expect(wrong.stderr).toContain('mend the errors');
    await trial.change('trial.yaml', /^status: .*$/m, 'status: growing');
    const growing = await trial.release('--note', 'x');
    expect([growing.code, growing.stdout]).toEqual([1, '']);
    await trial.change('trial.yaml', /^status: .*$/m, /^status: .*$/m.exec(before)![0]);
    expect(await trial.read('trial.yaml')).toBe(before);
    expect(await readdir(join(trial.folder, 'versions'))).toEqual(['1.0.0']);
  });
});

test.each([
  ['patch', '1.2.4'],
  ['minor', '1.3.0'],
  ['major', '2.0.0'],
] as const)('%s raises 1.2.3 to %s', (level, next) => {
  expect(raised('1.2.3', level)).toBe(next);
});
