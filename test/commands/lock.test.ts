import { existsSync } from 'node:fs';
import { utimes } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { withLock } from '../../src/commands/lock.mjs';
import { temporaryFolder } from '../support/temporary-folder.ts';

test('lets one work at a time, and tells the other that it waits', async () => {
  const file = join(await temporaryFolder(), 'deep', 'work.lock');
  const told: string[] = [];
  const work = (name: string) => async () => {
    told.push(`${name} begins`);
    await wait(100);
    told.push(`${name} ends`);
    return name;
  };
  const first = withLock(file, () => undefined, work('a'));
  const second = withLock(file, () => told.push('b waits'), work('b'));
  expect(await Promise.all([first, second])).toEqual(['a', 'b']);
  expect(told).toEqual(['a begins', 'b waits', 'a ends', 'b begins', 'b ends']);
  expect(existsSync(file)).toBe(false);
});

test('gives the lock back when the work fails', async () => {
  const file = join(await temporaryFolder(), 'work.lock');
  const failing = withLock(
    file,
    () => undefined,
    () => Promise.reject(new Error('no')),
  );
  await expect(failing).rejects.toThrow('no');
  expect(existsSync(file)).toBe(false);
});

test('breaks a lock that its holder no longer touches', async () => {
  const folder = await temporaryFolder({ 'work.lock': '1 1\n' });
  const file = join(folder, 'work.lock');
  const longAgo = new Date(Date.now() - 60_000);
  await utimes(file, longAgo, longAgo);
  const waited: string[] = [];
  expect(
    await withLock(
      file,
      () => waited.push('waited'),
      () => Promise.resolve(1),
    ),
  ).toBe(1);
  expect(waited).toEqual([]);
});
