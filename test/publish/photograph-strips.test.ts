import { describe, expect, it } from 'vitest';
import { strips } from '../../src/publish/photograph-strips.ts';
import type { Photograph } from '../../src/publish/photographs.ts';

const photograph = (alt: string, where: string | null, date: string | null): Photograph => ({
  alt,
  caption: null,
  where,
  date,
  width: 480,
  height: 360,
  webp: [],
  jpeg: [],
});

const names = (photographs: readonly Photograph[]) =>
  strips(photographs).map(({ where, photographs: of }) => [where, of.map(({ alt }) => alt).join(' ')]);

describe('strips', () => {
  it('sets photographs of one place side by side, oldest first', () => {
    expect(
      names([
        photograph('b', 'T1 1 2', '2025-10-02'),
        photograph('x', null, '2025-09-20'),
        photograph('a', 'T1 1 2', '2025-09-12'),
        photograph('c', 'T1 1 2', null),
      ]),
    ).toEqual([
      ['T1 1 2', 'c a b'],
      [null, 'x'],
    ]);
  });

  it('lets a photograph that is the only one of its place stand alone', () => {
    expect(names([photograph('a', 'T1', '2025-09-12'), photograph('b', 'T2', null)])).toEqual([
      [null, 'a'],
      [null, 'b'],
    ]);
  });
});
