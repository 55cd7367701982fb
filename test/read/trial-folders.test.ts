import { describe, expect, it } from 'vitest';
import { trialFolders } from '../../src/read/trial-folders.ts';
import type { Taken } from '../../src/read/unzip.ts';

const bytes = new Uint8Array([1]);
const given = (...paths: string[]) => trialFolders(new Map(paths.map((path) => [path, bytes])));
const shape = (folders: ReturnType<typeof given>) => ({
  kind: folders.kind,
  trials: folders.trials.map(({ name, files }) => [name, [...files.keys()]]),
});

describe('files that were given to a page are sorted into trial folders', () => {
  it('a trial folder, by its name', () => {
    expect(shape(given('autumn/trial.yaml', 'autumn/photos/a.jpg'))).toEqual({
      kind: 'trial',
      trials: [['autumn', ['photos/a.jpg', 'trial.yaml']]],
    });
  });

  it('a trial folder within folders that hold nothing else, as some programs unpack', () => {
    expect(shape(given('x/y/autumn/trial.yaml', 'x/y/autumn/harvest.csv')).trials).toEqual([
      ['autumn', ['harvest.csv', 'trial.yaml']],
    ]);
  });

  it('loose files, which have no name', () => {
    expect(shape(given('harvest.csv', 'trial.yaml'))).toEqual({
      kind: 'trial',
      trials: [[null, ['harvest.csv', 'trial.yaml']]],
    });
  });

  it('several trial folders side by side', () => {
    expect(shape(given('b/trial.yaml', 'a/trial.yaml', 'notes.txt'))).toEqual({
      kind: 'trials',
      trials: [
        ['a', ['trial.yaml']],
        ['b', ['trial.yaml']],
      ],
    });
  });

  it('a content folder, whose trials are all that lies in trials/', () => {
    const folders = given(
      'mine/site.yaml',
      'mine/cultivars.yaml',
      'mine/trials/a/trial.yaml',
      'mine/trials/b/x.csv',
    );
    expect(shape(folders)).toEqual({
      kind: 'content',
      trials: [
        ['a', ['trial.yaml']],
        ['b', ['x.csv']],
      ],
    });
    expect([folders.site, folders.cultivars]).toEqual([bytes, bytes]);
    expect(given('trials/a/trial.yaml')).toMatchObject({ kind: 'content', site: null });
  });

  it('what is no trial at all, as one trial that lacks its files', () => {
    expect(shape(given('notes/a.txt', 'notes/b.txt'))).toEqual({
      kind: 'trial',
      trials: [['notes', ['a.txt', 'b.txt']]],
    });
  });

  it('keeps what was not read, with its reason and its path from the folder on', () => {
    const { trials } = trialFolders(
      new Map<string, Taken>([
        ['autumn/trial.yaml', bytes],
        ['autumn/harvest.csv', 'damaged'],
        ['../up.csv', 'outside the archive'],
        ['autumn/layout.csv/inside.txt', bytes],
      ]),
    );
    expect(trials.map(({ name, files }) => [name, files.unread])).toEqual([
      [
        'autumn',
        [
          { path: '../up.csv', reason: 'outside the archive' },
          { path: 'harvest.csv', reason: 'damaged' },
          { path: 'layout.csv', reason: 'not a regular file' },
        ],
      ],
    ]);
  });
});
