import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { takeIn, type GivenFile } from '../../src/read/take-in.ts';

const file = (path: string, content: Uint8Array, size = content.length): GivenFile => ({
  path,
  size,
  arrayBuffer: () => Promise.resolve(content.slice().buffer),
});
const text = strToU8('a,b\n');

describe('taking in files that were given to a page', () => {
  it('keeps each under its path, and passes over hidden ones', async () => {
    const { files, refused } = await takeIn([
      file('autumn/harvest.csv', text),
      file('autumn/.DS_Store', text),
    ]);
    expect([...files]).toEqual([['autumn/harvest.csv', text]]);
    expect(refused).toEqual([]);
  });

  it('takes a zip for the folder that it holds, or for one of its own name', async () => {
    const folder = await takeIn([file('download.zip', zipSync({ 'autumn/harvest.csv': text }))]);
    expect([...folder.files.keys()]).toEqual(['autumn/harvest.csv']);
    const loose = await takeIn([
      file('autumn (2).zip', zipSync({ 'harvest.csv': text, 'trial.yaml': text })),
    ]);
    expect([...loose.files.keys()]).toEqual(['autumn/harvest.csv', 'autumn/trial.yaml']);
  });

  it('leaves a zip within a folder as one of its files', async () => {
    const archive = zipSync({ 'harvest.csv': text });
    const { files } = await takeIn([file('autumn/versions/1.0.0/autumn-1.0.0.zip', archive)]);
    expect([...files.values()]).toEqual([archive]);
  });

  it('says which archive is none, and goes on with the rest', async () => {
    const { files, refused } = await takeIn([file('bad.zip', text), file('harvest.csv', text)]);
    expect(refused).toEqual([{ name: 'bad.zip', fault: 'no zip' }]);
    expect([...files.keys()]).toEqual(['harvest.csv']);
  });

  it('does not even open what is too large or too many', async () => {
    const unopened: GivenFile = {
      ...file('x.bin', text),
      arrayBuffer: () => Promise.reject(new Error('opened')),
    };
    const large = await takeIn([{ ...unopened, size: 101 * 1024 * 1024 }]);
    expect([...large.files]).toEqual([['x.bin', 'too large']]);
    const six = Array.from({ length: 6 }, (_, index) => ({ ...unopened, path: String(index), size: 99e6 }));
    expect((await takeIn(six)).refused).toEqual([{ name: '', fault: 'too large' }]);
    const many = Array.from({ length: 20_001 }, (_, index) => ({ ...unopened, path: String(index) }));
    expect((await takeIn(many)).refused).toEqual([{ name: '', fault: 'too many files' }]);
  });

  it('keeps a file that cannot be opened any more as one that was not read', async () => {
    const gone: GivenFile = {
      ...file('harvest.csv', text),
      arrayBuffer: () => Promise.reject(new Error('gone')),
    };
    expect([...(await takeIn([gone])).files]).toEqual([['harvest.csv', 'not readable']]);
  });
});
