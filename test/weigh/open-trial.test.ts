import { expect, test } from 'vitest';
import { openTrial } from '../../src/weigh/open-trial.ts';
import { folderToWeigh, openedFolder } from './folder-to-weigh.ts';

const opening = (changes: Record<string, string | null>) => {
  const files = [...folderToWeigh(changes)].map(
    ([name, text]) => [name, new TextEncoder().encode(text)] as const,
  );
  return openTrial({ name: 'two-lettuces', files: new Map(files) });
};

test('A folder opens with its positions, whatever of it is not written yet', () => {
  const opened = openedFolder();
  expect(opened.trial.positions).toHaveLength(12);
  expect(opened.given).toEqual([]);
  expect(opened.readings).toBeNull();
});

test('A fault that weighing does not depend on keeps nobody from weighing', () => {
  const yaml = folderToWeigh()
    .get('trial.yaml')!
    .replace('licence: CC0-1.0\n', '')
    .replace('2025-08-25', 'August');
  const { opened, problems } = opening({ 'trial.yaml': yaml });
  expect(opened).not.toBeNull();
  expect(problems.length).toBeGreaterThan(0);
});

test.each([
  ['no trial.yaml', { 'trial.yaml': null }],
  [
    'no variables',
    {
      'trial.yaml': folderToWeigh()
        .get('trial.yaml')!
        .replace(/variables:[^]*/, ''),
    },
  ],
  ['a position twice', { 'layout.csv': `${folderToWeigh().get('layout.csv')!}T1,1,1,wren\n` }],
  [
    'a row of the harvest that cannot be read',
    { 'harvest.csv': 'container,row,column,fresh_weight\nT1,1,1,12O\n' },
  ],
])('A folder with %s does not open', (_, changes) => {
  const { opened } = opening(changes);
  expect(opened).toBeNull();
});
