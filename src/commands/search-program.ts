import { execFile } from 'node:child_process';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { say } from '../model/say.ts';
import { root } from './folders.ts';

const run = promisify(execFile);

/** What the package calls a system where Node calls it otherwise. */
const systems: Readonly<Record<string, string>> = { win32: 'windows' };

/**
 * Why the program that makes the search index cannot be run on this machine, in a few words; null where it can.
 * It comes as a package for each kind of machine, and not for every kind. Asked before it is used, because the
 * index maker itself answers with a stack of its own.
 */
export async function searchProgramFault(): Promise<string | null> {
  const machine = `${systems[process.platform] ?? process.platform}-${process.env['npm_config_arch'] ?? process.arch}`;
  const program = process.env['PAGEFIND_EXTENDED_BINARY_PATH'] ?? programOf(machine);
  if (program === null) return say('its program does not exist for {machine}', { machine });
  try {
    await run(program, ['--version']);
    return null;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    return say('its program does not run: {code}', { code });
  }
}

function programOf(machine: string): string | null {
  const { resolve } = createRequire(join(root, 'package.json'));
  const ending = process.platform === 'win32' ? '.exe' : '';
  for (const name of ['pagefind_extended', 'pagefind']) {
    try {
      return resolve(`@pagefind/${machine}/bin/${name}${ending}`);
    } catch {
      // Each machine has one of the two.
    }
  }
  return null;
}
