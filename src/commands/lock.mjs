/**
 * A lock file, so that two commands started at once do not write over each other's work. The holder touches
 * it every second; one that has not been touched for a while was left by a process that was killed.
 */
import {
  linkSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

const TOUCHED_EVERY = 1_000;
const STALE_AFTER = 15_000;
const LOOKED_AT_EVERY = 250;

/**
 * Runs `work` while holding the lock.
 * @template T
 * @param {string} file the lock file
 * @param {() => void} onWait called once where the lock is held by another
 * @param {() => Promise<T>} work
 * @returns {Promise<T>} what the work gives
 */
export async function withLock(file, onWait, work) {
  mkdirSync(dirname(file), { recursive: true });
  const mine = `${process.pid} ${Date.now()}\n`;
  let waiting = false;
  while (!take(file, mine)) {
    if (isStale(file)) {
      breakLock(file);
      continue;
    }
    if (!waiting) onWait();
    waiting = true;
    await wait(LOOKED_AT_EVERY);
  }
  const touching = setInterval(() => touch(file), TOUCHED_EVERY);
  try {
    return await work();
  } finally {
    clearInterval(touching);
    if (contentOf(file) === mine) rmSync(file, { force: true });
  }
}

function take(file, mine) {
  try {
    writeFileSync(file, mine, { flag: 'wx' });
    return true;
  } catch (error) {
    if (error.code === 'EEXIST') return false;
    throw error;
  }
}

function touch(file) {
  try {
    utimesSync(file, new Date(), new Date());
  } catch {
    // Taken away by somebody: the work is finished all the same.
  }
}

function isStale(file) {
  try {
    return Date.now() - statSync(file).mtimeMs > STALE_AFTER;
  } catch {
    return false;
  }
}

/**
 * By a rename first: of several processes that see the same stale lock only one gets to remove it. A lock
 * that another process has renewed meanwhile is put back.
 */
function breakLock(file) {
  const aside = `${file}.${process.pid}`;
  try {
    renameSync(file, aside);
    if (!isStale(aside)) linkSync(aside, file);
  } catch {
    // Another process was quicker.
  }
  rmSync(aside, { force: true });
}

function contentOf(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}
