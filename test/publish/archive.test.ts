import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { archive, isInside } from '../../src/publish/archive.ts';
import { publishedFiles } from '../../src/publish/files.ts';
import { sha256 } from '../../src/publish/sha256.ts';
import { bare, full, library, text } from './example.ts';
import { datasets } from './published.ts';

const bytes = (content: string): Uint8Array => new TextEncoder().encode(content);
const named = (name: string): Uint8Array =>
  publishedFiles(full, library).find((file) => file.name === name)!.bytes;

/** The DOS time of the first entry, from the bytes that the format puts it in. */
function timeOf(zip: Uint8Array): string {
  const view = new DataView(zip.buffer, zip.byteOffset);
  const [time, day] = [view.getUint16(10, true), view.getUint16(12, true)];
  return `${String((day >> 9) + 1980)}-${String((day >> 5) & 15)}-${String(day & 31)} ${String(time >> 11)}:${String((time >> 5) & 63)}`;
}

describe('archive', () => {
  test('makes the same bytes of the same files, with the day of the release as their time', () => {
    const files = [
      { name: 'b.txt', bytes: bytes('two') },
      { name: 'a.txt', bytes: bytes('one') },
    ];
    const first = archive('folder', '2025-12-01', files);
    expect(archive('folder', '2025-12-01', files)).toEqual(first);
    expect(timeOf(first)).toBe('2025-12-1 12:0');
    expect(Object.keys(unzipSync(first))).toEqual(['folder/b.txt', 'folder/a.txt']);
  });

  test.each(['../x', '/x', 'a/../x', './x', 'a//x', '', 'a\\b', 'C:x', 'a\0b'])(
    'refuses the name %j',
    (name) => {
      expect(isInside(name)).toBe(false);
      expect(() => archive('folder', '2025-12-01', [{ name, bytes: bytes('') }])).toThrow(
        /leaves its folder/,
      );
    },
  );
});

describe.each(datasets)('the archive of %s', (_name, item, of) => {
  const files = publishedFiles(item, of);
  const name = `${item.trial.id}-${item.trial.metadata.version}`;
  const inside = unzipSync(files.find((file) => file.name === `${name}.zip`)!.bytes);
  const loose = files.filter((file) => !file.name.endsWith('.zip'));

  test('holds one folder with every loose file byte for byte', () => {
    expect(Object.keys(inside)).toEqual(loose.map((file) => `${name}/${file.name}`));
    for (const file of loose) {
      expect(sha256(inside[`${name}/${file.name}`]!), file.name).toBe(sha256(file.bytes));
    }
  });

  test('has the checksum of every other file in SHA256SUMS', () => {
    const sums = text({ bytes: inside[`${name}/SHA256SUMS`]! });
    const expected = loose
      .filter((file) => file.name !== 'SHA256SUMS')
      .map((file) => `${sha256(file.bytes)}  ${file.name}\n`);
    expect(sums).toBe(expected.join(''));
  });

  test('has a README that names every file', () => {
    const readme = text({ bytes: inside[`${name}/README.txt`]! });
    for (const file of loose) expect(readme).toContain(`\n  ${file.name}\n`);
  });
});

describe('earlier versions', () => {
  test('keep their archive: the trial folder as it was, with its checksums', () => {
    const inside = unzipSync(named('every-field-2025-1.0.0.zip'));
    expect(Object.keys(inside)).toEqual(
      ['SHA256SUMS', 'harvest.csv', 'trial.yaml']
        .map((name) => `every-field-2025-1.0.0/${name}`)
        .sort((a, b) => Number(a.endsWith('SUMS')) - Number(b.endsWith('SUMS'))),
    );
    expect(timeOf(named('every-field-2025-1.0.0.zip'))).toBe('2025-11-12 12:0');
  });

  test('give the archive as it was published where the folder keeps it', () => {
    const kept = bytes('as published');
    const files = new Map([
      ...full.trial.files,
      ['versions/1.0.0/every-field-2025-1.0.0.zip', kept] as const,
    ]);
    const published = publishedFiles({ ...full, trial: { ...full.trial, files } }, library);
    expect(published.filter((file) => file.name.endsWith('1.0.0.zip')).map((file) => file.bytes)).toEqual([
      kept,
    ]);
  });

  test('are not made for a trial without any', () => {
    expect(publishedFiles(bare, library).filter((file) => file.name.endsWith('.zip'))).toHaveLength(1);
  });
});

describe('publishedFiles', () => {
  test('makes the same bytes twice, and makes them once for a library', () => {
    expect(publishedFiles(full, library)).toBe(publishedFiles(full, library));
    const again = publishedFiles(full, { ...library });
    expect(again).not.toBe(publishedFiles(full, library));
    expect(again.map((file) => sha256(file.bytes))).toEqual(
      publishedFiles(full, library).map((file) => sha256(file.bytes)),
    );
  });
  test('names no file twice, and none that leaves its folder', () => {
    const names = publishedFiles(full, library).map((file) => file.name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(isInside(name)).toBe(true);
  });
});
