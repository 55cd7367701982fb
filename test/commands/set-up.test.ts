import { existsSync } from 'node:fs';
import { chmod } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import { setUp } from '../../src/commands/set-up.mjs';
import { temporaryFolder } from '../support/temporary-folder.ts';

// The real thing takes half a minute and the network; here npm is a script that plays each part.
const project = {
  'package.json': JSON.stringify({ devDependencies: { node: '24.0.0' } }),
  'package-lock.json': JSON.stringify({
    packages: {
      '': {},
      'node_modules/yaml': { version: '2.0.0' },
      'node_modules/other-os': { optional: true },
    },
  }),
};
const installing = `
  import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
  if (process.argv[2] === 'ci') {
    mkdirSync('node_modules/node', { recursive: true });
    mkdirSync('node_modules/.bin', { recursive: true });
    writeFileSync('node_modules/node/installArchSpecificPackage.js', \`
      const { chmodSync, mkdirSync, writeFileSync } = require('node:fs');
      mkdirSync('bin');
      writeFileSync('bin/node', '#!/bin/sh\\\\necho v24.0.0\\\\n');
      chmodSync('bin/node', 0o755);
    \`);
  } else symlinkSync('../node/bin/node', 'node_modules/.bin/node');
`;
const npmThatSays = (text: string) => `console.error(${JSON.stringify(text)}); process.exitCode = 1;`;

async function setUpWith(npm: string, files: Record<string, string> = {}) {
  const root = await temporaryFolder({ ...project, 'npm/npm-cli.mjs': npm, ...files });
  const node = join(root, 'node_modules', 'node', 'bin', 'node');
  if (existsSync(node)) await chmod(node, 0o755);
  vi.stubEnv('npm_execpath', join(root, 'npm', 'npm-cli.mjs'));
  vi.stubEnv('npm_node_execpath', process.execPath);
  const said: string[] = [];
  const ready = await setUp(root, (text: string) => said.push(text));
  return { root, ready, said };
}

describe.skipIf(process.platform === 'win32')('set-up', () => {
  test('installs once, without scripts but that of node, and then goes straight on', async () => {
    const { root, ready, said } = await setUpWith(installing);
    const node = join(root, 'node_modules', 'node', 'bin', 'node');
    expect(ready).toEqual({ node });
    expect(said[0]).toMatch(/^Installing packages/);
    const again: string[] = [];
    expect(await setUp(root, (text: string) => again.push(text))).toEqual({ node });
    expect(again).toEqual([]);
  });

  test('says so where it lies below a folder that it cannot be built in, before anything is installed', async () => {
    const folder = await temporaryFolder({});
    for (const name of ['trials #1', 'which?', 'a*b', 'the "old" one', 'a\\b']) {
      const said: string[] = [];
      const { problem } = await setUp(join(folder, name, 'tankside'), (text: string) => said.push(text));
      expect(problem).toContain(
        `cannot work below a folder with ${/[^a-z0-9 ]/.exec(name)?.[0] ?? ''} in its name`,
      );
      expect(said).toEqual([]);
    }
  });

  test('does not do over what a developer’s own npm install has done', async () => {
    const { root, ready, said } = await setUpWith(npmThatSays('npm error never to be called'), {
      'node_modules/.package-lock.json': JSON.stringify({
        packages: { 'node_modules/yaml': { version: '2.0.0' } },
      }),
      'node_modules/yaml/package.json': '{}',
      'node_modules/node/bin/node': '#!/bin/sh\necho v24.0.0\n',
      'node_modules/.bin/node': '',
    });
    expect(ready).toEqual({ node: join(root, 'node_modules', 'node', 'bin', 'node') });
    expect(said).toEqual(['Set up in 0 s.']);
  });

  const failures = [
    { npm: 'npm error code ENOTFOUND', says: /^The packages could not be fetched: .* Connect this machine/ },
    {
      npm: 'npm error code EACCES',
      says: /^The packages could not be written: this folder may not be written/,
    },
    { npm: 'npm error code ENOSPC', says: /^The packages could not be written: the disk is full/ },
    {
      npm: 'npm error a strange thing',
      says: /^The packages could not be installed: npm error a strange thing/,
    },
  ];

  test.each(failures)('says what to do when npm says "$npm"', async ({ npm, says }) => {
    const { ready } = await setUpWith(npmThatSays(npm));
    expect(ready.problem).toMatch(says);
    expect(ready.problem).not.toMatch(/\n|at .*:\d+/);
  });
});
