import { describe, expect, test } from 'vitest';
import { asksOf } from '../../src/weigh/asks.ts';
import type { WeighState } from '../../src/weigh/weigh-state.ts';
import { folderToWeigh, openedFolder, placeOf, stateOf, weighed } from './folder-to-weigh.ts';

/** Five wrens and five egrets, the sixth of each (T2 2 3 and T2 2 2) open. */
const entries = [
  weighed('T1 1 1', '140'),
  weighed('T1 1 3', '150'),
  weighed('T1 2 2', '130'),
  weighed('T2 1 2', '145'),
  weighed('T2 2 1', '135'),
  weighed('T1 1 2', '60'),
  weighed('T1 2 1', '62'),
  weighed('T1 2 3', '58'),
  weighed('T2 1 1', '64'),
  weighed('T2 1 3', '61'),
];
const state = stateOf(entries);
const wren = placeOf('T2 2 3');
const egret = placeOf('T2 2 2');
const about = (text: string, at = wren, of: WeighState = state) =>
  asksOf(of, at, of.trial.metadata.variables[0], text).map((ask) => ask.about);

describe('A weight is asked about', () => {
  test('when it lies far from its fellows of the same treatment, and not when it lies among them', () => {
    expect(about('142')).toEqual([]);
    expect(about('220')).toEqual(['fellows']);
    expect(about('62')).toEqual(['fellows']);
    // Among the wrens, 142 would be nothing strange.
    expect(about('142', egret)).toEqual(['fellows']);
    expect(about('63', egret)).toEqual([]);
  });

  test('when it is as many times its fellows as one unit is of another, or ten times', () => {
    const [ask] = asksOf(state, wren, state.trial.metadata.variables[0], '1400');
    expect(ask).toEqual({
      about: 'unit',
      factor: 10,
      relation: 'more',
      usual: 140,
      question: 'is the decimal mark right?',
    });
    // 5 oz are 142 g; 0.3 lb are 136 g.
    expect(about('5')).toEqual(['unit']);
    const inPounds = stateOf(entries, openedFolder(withResolution('0.1')));
    expect(asksOf(inPounds, wren, inPounds.trial.metadata.variables[0], '0.3')[0]).toMatchObject({
      about: 'unit',
      factor: 453.6,
      relation: 'less',
    });
  });

  test('when it lies outside lowest and highest', () => {
    const few = stateOf([]);
    expect(about('601', wren, few)).toEqual(['range']);
    expect(about('4', wren, few)).toEqual(['range']);
    expect(about('600', wren, few)).toEqual([]);
  });

  test('when it lies between the steps of the scale', () => {
    const few = stateOf([], openedFolder(withResolution('5')));
    expect(about('132', wren, few)).toEqual(['step']);
    expect(about('135', wren, few)).toEqual([]);
  });

  test('when it is nothing', () => {
    expect(about('0')).toEqual(['zero']);
  });

  test('by fellows that were weighed at the same cut only', () => {
    const later = stateOf([...entries, { kind: 'cut', cut: 2, date: '2025-11-10' }]);
    expect(about('400', wren, later)).toEqual([]);
  });
});

function withResolution(resolution: string): Map<string, string> {
  const text = folderToWeigh().get('trial.yaml')!.replace('resolution: 1,', `resolution: ${resolution},`);
  return folderToWeigh({ 'trial.yaml': text });
}
