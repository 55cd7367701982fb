import { describe, expect, test } from 'vitest';
import { lastToUndo } from '../../src/weigh/journal.ts';
import { isDone, nextOpen, openPlaces, recordAt, weighState } from '../../src/weigh/weigh-state.ts';
import { folderToWeigh, journalOf, openedFolder, placeOf, stateOf, weighed } from './folder-to-weigh.ts';

describe('The state of a weigh-in', () => {
  test('holds the last entry of a place, and an entry taken back no more', () => {
    const entries = [weighed('T1 1 1', '131'), weighed('T1 1 1', '141')];
    expect(recordAt(stateOf(entries), placeOf('T1 1 1'))?.values).toEqual({ fresh_weight: '141' });
    const taken = stateOf([...entries, { kind: 'undone', of: 2 }]);
    expect(recordAt(taken, placeOf('T1 1 1'))?.values).toEqual({ fresh_weight: '131' });
    const both = stateOf([...entries, { kind: 'undone', of: 2 }, { kind: 'undone', of: 1 }]);
    expect(recordAt(both, placeOf('T1 1 1'))).toBeNull();
  });

  test('is led on to the next open place, and round to those passed over', () => {
    const state = stateOf([weighed('T1 1 1', '131'), weighed('T1 1 3', '120')]);
    expect(nextOpen(state, placeOf('T1 1 1'))).toEqual(placeOf('T1 1 2'));
    expect(nextOpen(state, placeOf('T1 1 2'))).toEqual(placeOf('T1 2 1'));
    expect(nextOpen(state, placeOf('T2 2 3'))).toEqual(placeOf('T1 1 2'));
    expect(nextOpen(state, null)).toEqual(placeOf('T1 1 2'));
  });

  test('has no open place once those left are called not weighed, and what was weighed stays', () => {
    const first = stateOf([weighed('T1 1 1', '131')]);
    const places = openPlaces(first);
    const state = stateOf([weighed('T1 1 1', '131'), { kind: 'left', cut: 1, date: '2025-10-20', places }]);
    expect(openPlaces(state)).toEqual([]);
    expect(nextOpen(state, null)).toBeNull();
    expect(recordAt(state, placeOf('T1 1 1'))?.status).toBe('weighed');
    expect(recordAt(state, placeOf('T2 2 3'))?.status).toBe('not weighed');
  });

  test('passes over at a later cut whatever ended at an earlier one', () => {
    const state = stateOf([
      weighed('T1 1 1', '', { status: 'dead', values: {} }),
      weighed('T1 1 2', '120'),
      { kind: 'cut', cut: 2, date: '2025-11-10' },
    ]);
    expect(isDone(state, placeOf('T1 1 1'))).toBe(true);
    expect(isDone(state, placeOf('T1 1 2'))).toBe(false);
    expect(nextOpen(state, null)).toEqual(placeOf('T1 1 2'));
  });

  test('begins with what the folder holds, at the first cut that is not whole', () => {
    const rows = folderToWeigh()
      .get('layout.csv')!
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => `${line.split(',').slice(0, 3).join(',')},150,`);
    const harvest = ['container,row,column,fresh_weight,remark', ...rows].join('\n');
    const whole = openedFolder(folderToWeigh({ 'harvest.csv': harvest }));
    expect(weighState(whole, []).cut).toBe(2);
    const blank = harvest.replace('T1,1,2,150,', 'T1,1,2,,leans');
    const state = weighState(openedFolder(folderToWeigh({ 'harvest.csv': blank })), []);
    expect(state.cut).toBe(1);
    expect(openPlaces(state)).toEqual([placeOf('T1 1 2')]);
    expect([...state.remarks.values()]).toEqual(['leans']);
  });
});

describe('What can be taken back', () => {
  test('is the last entry that stands, and never how the walk was set', () => {
    const walk = { kind: 'walk', boustrophedon: true, whole: false } as const;
    const journal = journalOf(weighed('T1 1 1', '131'), walk, weighed('T1 1 2', '9'), {
      kind: 'undone',
      of: 3,
    });
    expect(lastToUndo(journal)?.number).toBe(1);
    expect(lastToUndo(journalOf(walk))).toBeNull();
  });
});
