import { strToU8, zipSync } from 'fflate';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unzip } from '../../src/read/unzip.ts';
import { zipEntries } from '../../src/read/zip-entries.ts';
import { changedZip } from '../support/changed-zip.ts';

const harvest = strToU8('container,row,column,fresh_weight\nT1,1,1,131\n');
const good = () =>
  zipSync({ 'autumn/harvest.csv': harvest, 'autumn/photos/a.jpg': [strToU8('x'), { level: 0 }] });

describe('unzipping an archive in memory', () => {
  it('gives each file by its path, byte for byte, deflated or stored', () => {
    const files = unzip(good());
    expect(files).toEqual(
      new Map([
        ['autumn/harvest.csv', harvest],
        ['autumn/photos/a.jpg', strToU8('x')],
      ]),
    );
  });

  it('gives back whatever was packed', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 100_000, size: 'max' }), (bytes) => {
        expect(unzip(zipSync({ 'any.bin': bytes }))).toEqual(new Map([['any.bin', bytes]]));
      }),
      { numRuns: 30 },
    );
  });

  it('reads what other makers of archives pack: Python 3.11 with a remark, Info-ZIP 3.0 as a stream', () => {
    const remark =
      'UEsDBBQAAAgIAAAAIVwyss9sDQAAACADAAAMAAAAZsO4bGQvw6YuY3N2S9RJ4kocxaN4FGPFAFBLAQIUAxQAAAgIAAAAIVwyss9sDQAAACADAAAMAAAAAAAAAAAAAACAAQAAAABmw7hsZC/Dpi5jc3ZQSwUGAAAAAAEAAQA6AAAANwAAAA8AbWFkZSBieSBhbm90aGVy';
    const stream =
      'UEsDBAoAAAAAAG5neV0AAAAAAAAAAAAAAAAHAAAAYXV0dW1uL1BLAwQUAAgACABuZ3ldAAAAAAAAAAAIAAAAEgAAAGF1dHVtbi9oYXJ2ZXN0LmNzdkvUSeIy1DHiAgBQSwcIeweXCgoAAAAIAAAAUEsBAh4DCgAAAAAAbmd5XQAAAAAAAAAAAAAAAAcAAAAAAAAAAAAQAO1BAAAAAGF1dHVtbi9QSwECHgMUAAgACABuZ3ldeweXCgoAAAAIAAAAEgAAAAAAAAABAAAApIElAAAAYXV0dW1uL2hhcnZlc3QuY3N2UEsFBgAAAAACAAIAdQAAAG8AAAAAAA==';
    expect(unzip(Buffer.from(remark, 'base64'))).toEqual(
      new Map([['føld/æ.csv', strToU8('a,b\n'.repeat(200))]]),
    );
    expect(unzip(Buffer.from(stream, 'base64'))).toEqual(
      new Map([['autumn/harvest.csv', strToU8('a,b\n1,2\n')]]),
    );
  });

  it('passes over what a computer adds unasked', () => {
    const bytes = zipSync({
      '__MACOSX/autumn/._harvest.csv': harvest,
      'autumn/.DS_Store': harvest,
      'a.csv': harvest,
    });
    expect(unzip(bytes)).toEqual(new Map([['a.csv', harvest]]));
  });

  it.each([
    '../harvest.csv',
    'a/../../b.csv',
    '/etc/passwd',
    'C:\\trial\\harvest.csv',
    '..\\b.csv',
    'a//b.csv',
  ])('does not follow the path %s out of the archive', (path) => {
    const files = unzip(zipSync({ [path]: harvest }));
    expect([...(files as Map<string, unknown>).values()]).toEqual(['outside the archive']);
  });

  it('takes backslashes for the separators that they were meant as', () => {
    expect(unzip(zipSync({ 'autumn\\harvest.csv': harvest }))).toEqual(
      new Map([['autumn/harvest.csv', harvest]]),
    );
  });

  it('lets go of a file that swells beyond what the archive says, before it has swollen', () => {
    const swelling = zipSync({ 'harvest.csv': new Uint8Array(40 * 1024 * 1024) }, { level: 9 });
    const bytes = changedZip(swelling, { size: 1000 });
    const before = performance.now();
    expect(unzip(bytes)).toEqual(new Map([['harvest.csv', 'damaged']]));
    expect(performance.now() - before).toBeLessThan(1000);
  });

  it('refuses a file over 100 MB, and an archive that says it holds over 500 MB, without unpacking', () => {
    const one = zipSync({ 'harvest.csv': harvest });
    expect(unzip(changedZip(one, { size: 101 * 1024 * 1024 }))).toEqual(
      new Map([['harvest.csv', 'too large']]),
    );
    expect(unzip(changedZip(one, { size: 0xffffffff }))).toEqual(new Map([['harvest.csv', 'too large']]));
    expect(unzip(good(), { bytes: 40, files: 10 })).toBe('too large');
    expect(unzip(good(), { bytes: 1000, files: 1 })).toBe('too many files');
  });

  it('says which files are locked, are links, are packed in a rare way or stand there twice', () => {
    const one = zipSync({ 'harvest.csv': harvest });
    expect(unzip(changedZip(one, { flags: 1 }))).toEqual(
      new Map([['harvest.csv', 'locked with a password']]),
    );
    expect(unzip(changedZip(one, { method: 14 }))).toEqual(
      new Map([['harvest.csv', 'packed in a rare way']]),
    );
    const link = zipSync({ 'harvest.csv': [harvest, { os: 3, attrs: 0o120777 << 16 }] });
    expect(unzip(link)).toEqual(new Map([['harvest.csv', 'a link']]));
    const twice = zipSync({ 'harvest.csv': harvest, 'harvest.csx': harvest });
    const renamed = twice.map((byte) => (byte === 'x'.charCodeAt(0) ? 'v'.charCodeAt(0) : byte));
    expect(unzip(renamed)).toEqual(new Map([['harvest.csv', 'in the archive twice']]));
  });

  it('holds each file against its checksum and its size', () => {
    const one = zipSync({ 'harvest.csv': [harvest, { level: 0 }] });
    const altered = one.map((byte, index) => (index === 45 ? byte ^ 1 : byte));
    expect(unzip(altered)).toEqual(new Map([['harvest.csv', 'damaged']]));
    expect(unzip(changedZip(one, { size: 5 }))).toEqual(new Map([['harvest.csv', 'damaged']]));
    expect(unzip(changedZip(one, { at: 7 }))).toEqual(new Map([['harvest.csv', 'damaged']]));
    expect(unzip(changedZip(one, { at: 0xfffffff0 }))).toEqual(new Map([['harvest.csv', 'damaged']]));
  });

  it('knows what is no archive, or one cut off', () => {
    const bytes = good();
    expect(unzip(new Uint8Array())).toBe('no zip');
    expect(unzip(harvest)).toBe('no zip');
    expect(unzip(bytes.subarray(0, bytes.length - 1))).toBe('no zip');
    expect(unzip(bytes.subarray(30))).toBe('no zip');
  });

  it('never throws, whatever the bytes', () => {
    const bytes = good();
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { minLength: 1, maxLength: 8 }),
        (changes) => {
          const changed = bytes.slice();
          for (const [at, byte] of changes) changed[at] = byte;
          const files = unzip(changed);
          // Whatever is still given as a file is one that was packed.
          if (typeof files === 'string') return;
          for (const content of files.values()) {
            if (typeof content !== 'string') expect([harvest, strToU8('x')]).toContainEqual(content);
          }
        },
      ),
      { numRuns: 3000 },
    );
  });
});

describe('the directory of an archive', () => {
  it('is read past a remark that looks like another end', () => {
    const bytes = good();
    const remark = new Uint8Array([...bytes, 0x50, 0x4b, 5, 6, 0, 0]);
    new DataView(remark.buffer).setUint16(bytes.length - 2, 6, true);
    expect(zipEntries(remark)?.map(({ path }) => path)).toEqual([
      'autumn/harvest.csv',
      'autumn/photos/a.jpg',
    ]);
  });
});
