import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from '../../src/commands/folders.ts';

interface Package {
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
}

const packages = JSON.parse(await readFile(join(root, 'package.json'), 'utf8')) as Package;
const all = Object.entries({ ...packages.dependencies, ...packages.devDependencies });

test('every dependency has its reason in DEVELOPERS.md', async () => {
  const text = await readFile(join(root, 'DEVELOPERS.md'), 'utf8');
  // A family such as `@types/d3-*` stands for its members.
  const named = [...text.matchAll(/`([^`\s]+)`/g)].map(([, name = '']) => name);
  const hasReason = (name: string) => {
    return named.some((one) => one === name || (one.endsWith('*') && name.startsWith(one.slice(0, -1))));
  };
  expect(all.length).toBeGreaterThan(0);
  expect(all.map(([name]) => name).filter((name) => !hasReason(name))).toEqual([]);
});

test('every dependency is pinned to one version', () => {
  expect(all.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});
