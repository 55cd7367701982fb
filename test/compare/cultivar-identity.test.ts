import { describe, expect, test } from 'vitest';
import { cultivarIdentity } from '../../src/compare/cultivar-identity.ts';
import { trialOf } from '../support/trial-of.ts';

const known = [{ id: 'slate-egret', name: 'Slate Egret', synonyms: ['Grey Egret'] }];

function trial(id: string, levels: { id: string; name?: string }[], cultivar?: string) {
  const made = trialOf(
    levels.map((level) => ({ container: 'T1', treatment: { cultivar: level.id }, weight: 100 })),
    { metadata: { crop: { name: 'Lettuce', ...(cultivar === undefined ? {} : { cultivar }) } } },
  );
  made.id = id;
  const [factor] = made.metadata.factors!;
  factor.kind = 'cultivar';
  factor.levels = levels as typeof factor.levels;
  return { trial: made };
}

describe('a cultivar', () => {
  const a = trial('a', [
    { id: 'slate-egret' },
    { id: 'x', name: 'Loam Plover' },
    { id: 'y', name: 'grey egret' },
  ]);
  const b = trial(
    'b',
    [
      { id: 'x', name: 'Silt Heron' },
      { id: 'z', name: 'Loam Plover' },
    ],
    'Slate Egret',
  );
  const identity = cultivarIdentity([a, b], known);

  test('of the list is known by its id, its name and its synonyms', () => {
    expect(identity.of(a.trial, 'slate-egret')).toBe('slate-egret');
    expect(identity.of(a.trial, 'y')).toBe('slate-egret');
    expect(identity.of(b.trial)).toBe('slate-egret');
    expect(identity.name('slate-egret')).toBe('Slate Egret');
  });

  test('of two trials under one name is one, whatever their ids', () => {
    expect(identity.of(b.trial, 'z')).toBe(identity.of(a.trial, 'x'));
    expect(identity.name(identity.of(a.trial, 'x')!)).toBe('Loam Plover');
  });

  test('that shares an id with another of a different name is not taken for it', () => {
    expect(identity.of(b.trial, 'x')).not.toBe(identity.of(a.trial, 'x'));
    expect(identity.name(identity.of(b.trial, 'x')!)).toBe('Silt Heron');
  });

  test('is told alike in whichever order the trials come', () => {
    const turned = cultivarIdentity([b, a], known);
    for (const [each, level] of [
      [a.trial, 'x'],
      [b.trial, 'x'],
      [b.trial, 'z'],
    ] as const) {
      expect(turned.of(each, level)).toBe(identity.of(each, level));
    }
  });

  test('of a trial that names none is none', () => {
    expect(identity.of(a.trial)).toBeNull();
  });
});
