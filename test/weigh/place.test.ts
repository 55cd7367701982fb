import { expect, test } from 'vitest';
import { placesOf } from '../../src/weigh/place.ts';
import { folderToWeigh, openedFolder } from './folder-to-weigh.ts';

const { trial } = openedFolder();
const walked = (boustrophedon: boolean) =>
  placesOf(trial, { boustrophedon, whole: false }).map((place) => Object.values(place).join(' '));

test('Places are walked row by row from column 1, container by container', () => {
  expect(walked(false).slice(0, 7)).toEqual([
    'T1 1 1 1',
    'T1 1 2 1',
    'T1 1 3 1',
    'T1 2 1 1',
    'T1 2 2 1',
    'T1 2 3 1',
    'T2 1 1 1',
  ]);
});

test('There and back, every even row is walked from its end, and each container begins anew', () => {
  expect(walked(true).slice(2, 8)).toEqual([
    'T1 1 3 1',
    'T1 2 3 1',
    'T1 2 2 1',
    'T1 2 1 1',
    'T2 1 1 1',
    'T2 1 2 1',
  ]);
});

test('A pot of several plants is as many places, or one where it is weighed whole', () => {
  const layout = folderToWeigh().get('layout.csv')!.replace('cultivar\n', 'cultivar,plants\n');
  const rows = layout.replaceAll(/(wren|egret)\n/g, '$1,2\n');
  const opened = openedFolder(folderToWeigh({ 'layout.csv': rows }));
  const plants = (whole: boolean) =>
    placesOf(opened.trial, { boustrophedon: false, whole })
      .slice(0, 3)
      .map(({ column, plant }) => [column, plant]);
  expect(plants(false)).toEqual([
    [1, 1],
    [1, 2],
    [2, 1],
  ]);
  expect(plants(true)).toEqual([
    [1, null],
    [2, null],
    [3, null],
  ]);
});
