import { expect, test } from 'vitest';
import { seasonNames } from '../../../src/compute/format/season-names.ts';

const origin = (title: string) => {
  const address = 'https://otterbrook.example.org/';
  return { title, address, page: address, identifier: address, gathered: '2026-11-25' };
};
const named = (...trials: Parameters<typeof seasonNames>[0]) => [...seasonNames(trials).values()];

test('a trial is called by its season, and by its id too where two share one', () => {
  expect(named({ id: 'a', season: 'autumn 2025' }, { id: 'b', season: 'spring 2026' })).toEqual([
    'autumn 2025',
    'spring 2026',
  ]);
  expect(named({ id: 'a', season: 'autumn 2025' }, { id: 'b', season: 'autumn 2025' })).toEqual([
    'autumn 2025, a',
    'autumn 2025, b',
  ]);
});

test('a trial of another site is called by its site as well, and never mixed up with one of the same id', () => {
  const season = 'autumn 2025';
  expect(
    named(
      { id: 'a', season },
      { id: 'otter/a', season, origin: origin('Otterbrook') },
      { id: 'heron/a', season, origin: origin('Heron') },
      { id: 'heron/b', season, origin: origin('Heron') },
    ),
  ).toEqual(['autumn 2025', 'autumn 2025, Otterbrook', 'autumn 2025, Heron, a', 'autumn 2025, Heron, b']);
});
