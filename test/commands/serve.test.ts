import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/commands/folders.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const home = '<link rel="canonical" href="https://example.org/garden/"><h1>home</h1>';

test.each(['SIGINT', 'SIGTERM'] as const)('prints its address, and ends cleanly by %s', async (signal) => {
  const folder = await temporaryFolder({ 'index.html': home });
  const args = [join(root, 'src/commands/tankside.ts'), 'serve', '--port', '0', '--host', '127.0.0.1'];
  const child = spawn(process.execPath, args, { env: { ...process.env, TANKSIDE_OUT: folder } });
  const ended = new Promise((done) => child.on('close', (code, killed) => done([code, killed])));
  const url = await new Promise<string>((done) => {
    child.stdout.on('data', (piece: Buffer) => done(/http:\S+/.exec(piece.toString())?.[0] ?? ''));
  });
  expect(new URL(url).pathname).toBe('/garden/');
  expect(await (await fetch(url)).text()).toBe(home);
  child.kill(signal);
  expect(await ended).toEqual([0, null]);
});
