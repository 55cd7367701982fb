import { describe, expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { computeFindings } from '../../src/compute/findings.ts';
import { asBytes, goodFiles } from './good-folder.ts';

/** The lines of the plane of seven points: seven blocks of three, each pair of treatments in one of them. */
const sevenInThrees = [[0, 1, 2], [0, 3, 4], [0, 5, 6], [1, 3, 5], [1, 4, 6], [2, 3, 6], [2, 4, 5]]; // prettier-ignore
const names = ['avocet', 'bunting', 'curlew', 'dunlin', 'egret', 'fulmar', 'godwit'];

/** A trial of tanks of one row, each a block of the treatments listed, with weights of no meaning. */
function checkedTrial(blocks: readonly (readonly number[])[], arrangement: string) {
  const levels = [...new Set(blocks.flat())].sort().map((level) => names[level]!);
  const cells = blocks.flatMap((block, tank) =>
    block.map((level, index) => ({ at: `T${tank + 1},1,${index + 1}`, level: names[level]!, tank, index })),
  );
  const files = goodFiles();
  const tanks = blocks.map(
    (block, tank) =>
      `  - {id: T${tank + 1}, kind: tank, rows: 1, columns: ${block.length}, block: "${tank + 1}"}`,
  );
  const listed = levels.map((id) => `{id: ${id}, name: ${id}}`).join(', ');
  const yaml = files
    .get('trial.yaml')!
    .replace(/levels: .*\n {4}check: .*\n/, `levels: [${listed}]\n`)
    .replace('completely randomised', arrangement)
    .replace(/ {2}- \{id: T1.*\n {2}- \{id: T2.*\n/, `${tanks.join('\n')}\n`);
  files.set('trial.yaml', yaml);
  files.set(
    'layout.csv',
    ['container,row,column,cultivar', ...cells.map(({ at, level }) => `${at},${level}`), ''].join('\n'),
  );
  files.set(
    'harvest.csv',
    [
      'container,row,column,fresh_weight',
      ...cells.map(({ at, tank, index }) => `${at},${120 + ((tank * 17 + index * 29) % 43)}`),
      '',
    ].join('\n'),
  );
  return checkTrial('seven', asBytes(files), { cultivars: [], today: '2026-05-01', prefix: '' });
}
const errors = (blocks: readonly (readonly number[])[]) =>
  checkedTrial(blocks, 'randomised blocks')
    .problems.filter(({ severity }) => severity === 'error')
    .map(({ message }) => message);

describe('blocks that cannot hold every treatment', () => {
  test('are randomised blocks where they are balanced, or where checks link entries grown once', () => {
    expect(errors(sevenInThrees)).toEqual([]);
    expect(errors([[0, 1, 2, 3], [0, 1, 4, 5]])).toEqual([]); // prettier-ignore
  });

  test.each([
    ['a treatment stands twice in a block', [[0, 1, 1], ...sevenInThrees.slice(1)]],
    ['a treatment has fewer units than the others', sevenInThrees.slice(1)],
    ['a block lacks a unit', [[0, 1], ...sevenInThrees.slice(1)]],
    ['no treatment links the blocks', [[0, 1], [2, 3]]], // prettier-ignore
  ])('contradict the arrangement where %s', (_, blocks) => {
    expect(errors(blocks)).toEqual([
      expect.stringMatching(/^design.arrangement is randomised blocks, but block "\d" lacks/),
    ]);
  });

  test('are fitted as blocks, whichever way the arrangement is named', () => {
    const [named, plain] = ['randomised blocks', 'completely randomised'].map((arrangement) =>
      computeFindings(checkedTrial(sevenInThrees, arrangement).trial!),
    );
    expect(named!.inference[0]!.verdict).toBe('tested');
    expect(named!.inference[0]!.anova.map(({ term, df }) => [term, df]).slice(0, 2)).toEqual([['block', 6], ['cultivar', 6]]); // prettier-ignore
    expect(named!.inference).toEqual(plain!.inference);
  });
});
