import { expect, test } from 'vitest';
import { harvestCsv } from '../../src/weigh/harvest-csv.ts';
import { folderToWeigh, openedFolder, placeOf, stateOf, weighed } from './folder-to-weigh.ts';

const lines = (text: string) => text.trimEnd().split('\n');

test('Every place has a row in walking order, with what was entered or room for it', () => {
  const text = harvestCsv(
    stateOf([
      weighed('T1 1 1', '131', { remark: 'tip burn; "outer" leaves, mostly' }),
      weighed('T1 1 2', '', { status: 'dead', values: {} }),
      weighed('T1 1 3', '0'),
    ]),
  );
  expect(lines(text)).toHaveLength(13);
  expect(lines(text).slice(0, 5)).toEqual([
    'container,row,column,date,plant,fresh_weight,status,remark',
    'T1,1,1,2025-10-20,1,131,,"tip burn; ""outer"" leaves, mostly"',
    'T1,1,2,2025-10-20,1,,dead,',
    'T1,1,3,2025-10-20,1,0,weighed,',
    'T1,2,1,,1,,,',
  ]);
});

test('What ended at an earlier cut is said again at a later one', () => {
  const text = harvestCsv(
    stateOf([
      weighed('T1 1 1', '', { status: 'dead', values: {} }),
      weighed('T1 1 2', '120'),
      { kind: 'cut', cut: 2, date: '2025-11-10' },
      weighed('T1 1 2', '', { status: 'no regrowth', values: {}, cut: 2, date: '2025-11-10' }),
    ]),
  );
  expect(lines(text)).toHaveLength(25);
  expect(lines(text).slice(13, 15)).toEqual(['T1,1,1,2,,1,,dead,', 'T1,1,2,2,2025-11-10,1,,no regrowth,']);
});

test('Headings, delimiter and decimal mark are those that trial.yaml declares', () => {
  const yaml = folderToWeigh().get('trial.yaml')!;
  const declared = `${yaml}harvest: {columns: {fresh_weight: {column: Wt, unit: kg}, remark: {column: Note}}, delimiter: ";", decimal: ","}\n`;
  const opened = openedFolder(folderToWeigh({ 'trial.yaml': declared }));
  const text = harvestCsv(stateOf([weighed('T1 1 1', '0,131', { remark: 'a; b' })], opened));
  expect(lines(text).slice(0, 2)).toEqual([
    'container;row;column;date;plant;Wt;status;Note',
    'T1;1;1;2025-10-20;1;0,131;;"a; b"',
  ]);
});

test('Rows that the folder holds stay to the digit, and only what was entered anew replaces them', () => {
  const harvest =
    'container,row,column,fresh_weight,status,remark\nT1,1,1,131.0,,first\nT1,1,2,,dead,\nT1,1,3,,,leans\n';
  const opened = openedFolder(folderToWeigh({ 'harvest.csv': harvest }));
  const text = harvestCsv(stateOf([weighed('T1 1 2', '99')], opened));
  expect(lines(text).slice(1, 4)).toEqual([
    'T1,1,1,,1,131.0,,first',
    'T1,1,2,2025-10-20,1,99,,',
    'T1,1,3,,1,,,leans',
  ]);
});

test('A pot weighed whole has no plant', () => {
  const layout = folderToWeigh()
    .get('layout.csv')!
    .replace('cultivar\n', 'cultivar,plants\n')
    .replaceAll(/(wren|egret)\n/g, '$1,2\n');
  const opened = openedFolder(folderToWeigh({ 'layout.csv': layout }));
  const whole = { kind: 'walk', boustrophedon: false, whole: true } as const;
  const text = harvestCsv(
    stateOf([whole, weighed('T1 1 1 whole', '300', { place: placeOf('T1 1 1 whole') })], opened),
  );
  expect(lines(text)).toHaveLength(13);
  expect(lines(text)[1]).toBe('T1,1,1,2025-10-20,300,,');
});
