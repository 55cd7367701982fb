import { describe, expect, test } from 'vitest';
import { cultivarIdentity } from '../../src/compare/cultivar-identity.ts';
import type { Cultivar } from '../../src/model/library.ts';
import type { Factor, Trial } from '../../src/model/trial.ts';
import { full } from '../publish/example.ts';

type Levels = Factor['levels'];

function trial(id: string, levels: Levels, species: string, there?: readonly Cultivar[]): Trial {
  const factor = { id: 'cultivar', name: 'Cultivar', kind: 'cultivar' as const, levels };
  const folder = id.split('/')[0]!;
  const address = `https://${folder}.example.org/`;
  const origin = {
    folder,
    title: folder,
    address,
    id: id.split('/')[1] ?? id,
    page: address,
    data: address,
    identifier: address,
    gathered: '2026-11-25',
  };
  return {
    ...full.trial,
    id,
    metadata: { ...full.trial.metadata, crop: { name: 'Crop', species }, factors: [factor] },
    ...(there === undefined ? {} : { origin, cultivarsThere: there }),
  };
}

const lettuce = 'Lactuca sativa';
const known: Cultivar[] = [
  { id: 'slate-egret', name: 'Slate Egret', species: lettuce, synonyms: ['Grey Egret'] },
  { id: 'c1', name: 'Cobalt Wren', species: lettuce },
];

function identities(trials: readonly Trial[]): (string | null)[][] {
  const { of } = cultivarIdentity(
    trials.map((each) => ({ trial: each })),
    known,
  );
  return trials.map((each) => each.metadata.factors![0]!.levels.map(({ id }) => of(each, id)));
}

describe('a cultivar of another site', () => {
  test('is known by its name there, whatever its id', () => {
    const there = [{ id: 'x9', name: 'slate egret', species: lettuce }];
    expect(identities([trial('otter/a', [{ id: 'x9' }], lettuce, there)])).toEqual([['slate-egret']]);
  });
  test('is known by a synonym of either list', () => {
    const there = [
      { id: 'x1', name: 'Grey Egret', species: lettuce },
      { id: 'x2', name: 'Blue Bird', synonyms: ['Cobalt Wren'], species: lettuce },
    ];
    expect(identities([trial('otter/a', [{ id: 'x1' }, { id: 'x2' }], lettuce, there)])).toEqual([
      ['slate-egret', 'c1'],
    ]);
  });
  test('is another where its id is one of this site but its name is not', () => {
    const there = [{ id: 'c1', name: 'Russet Plover', species: lettuce }];
    expect(identities([trial('otter/a', [{ id: 'c1' }], lettuce, there)])).toEqual([['Russet Plover']]);
  });
  test('is another where the same name is of another species', () => {
    const there = [{ id: 'x1', name: 'Slate Egret', species: 'Ocimum basilicum' }];
    const [[found]] = identities([trial('otter/a', [{ id: 'x1' }], 'Ocimum basilicum', there)]) as [string[]];
    expect(found).toBe('x1');
  });
  test('of one id on two sites is two where the names differ, and one of two ids where they agree', () => {
    const otter = [
      { id: 'b1', name: 'Amber Finch' },
      { id: 'b2', name: 'Dusk Pipit' },
    ];
    const heron = [
      { id: 'b1', name: 'Elder Siskin' },
      { id: 'b7', name: 'Dusk Pipit' },
    ];
    const levels = (list: readonly { id: string }[]) => list.map(({ id }) => ({ id })) as Levels;
    const trials = [
      trial('heron/a', levels(heron), lettuce, heron),
      trial('otter/a', levels(otter), lettuce, otter),
    ];
    const found = identities(trials);
    expect(found).toEqual([
      ['b1', 'b7'],
      ['Amber Finch', 'b7'],
    ]);
    // Whatever the order in which the trials are given.
    expect(identities([...trials].reverse())).toEqual([...found].reverse());
  });
  test('without a list there goes by the level’s own name, else by its id, never by an id of this site', () => {
    const levels: Levels = [{ id: 'slate-egret' }, { id: 'z', name: 'Cobalt Wren' }];
    expect(identities([trial('otter/a', levels, lettuce, [])])).toEqual([['otter/slate-egret', 'c1']]);
  });
  test('never changes which cultivar a trial of this site means', () => {
    const own = trial('own-trial', [{ id: 'b1', name: 'Amber Finch' }, { id: 'b2' }], lettuce);
    const there = [{ id: 'b2', name: 'Amber Finch' }];
    const alone = identities([own])[0];
    expect(identities([own, trial('a-site/a', [{ id: 'b2' }], lettuce, there)])).toEqual([alone, ['b1']]);
  });
});
