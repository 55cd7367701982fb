import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { Library } from '../../src/model/library.ts';
import type { Trial } from '../../src/model/trial.ts';
import { exampleFolder } from '../../src/publish/example-folder.ts';
import { bare, full } from './example.ts';
import { demo } from './published.ts';

const bytes = new TextEncoder().encode('private');
const libraryOf = (trial: Trial): Library => ({ ...demo, trials: [{ ...bare, trial }] });
const entries = (library: Library) =>
  exampleFolder(library).flatMap((file) => Object.keys(unzipSync(file.bytes)));

describe('the example folder', () => {
  test('holds the files of the demo that a check reads, and no photograph', () => {
    const names = entries(demo);
    expect(names.length).toBeGreaterThan(2);
    for (const name of names) expect(name).toMatch(/^[^/]+\/[a-z.]+\.(yaml|csv|mdx)$/);
  });
  test('holds nothing else that lies in the folder', () => {
    const others = ['notes.txt', 'photos/garden.jpg', 'versions/1.0.0/trial.yaml', 'addresses.xlsx'];
    const files = new Map([...bare.trial.files, ...others.map((name) => [name, bytes] as const)]);
    const names = entries(libraryOf({ ...bare.trial, files }));
    for (const name of others) expect(names.join()).not.toContain(name);
  });
  test('is of no trial with photographs, or with an e-mail that is not public', () => {
    expect(exampleFolder(libraryOf(full.trial))).toEqual([]);
    const yaml = new TextEncoder().encode('# ask tam@private.example.org\n');
    const files = new Map([...bare.trial.files, ['trial.yaml', yaml] as const]);
    expect(exampleFolder(libraryOf({ ...bare.trial, files }))).toEqual([]);
  });
});
