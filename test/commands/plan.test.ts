import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { planOptions } from '../../src/commands/plan-options.ts';
import { runCommand } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const lettuce = [
  'plan',
  '--question',
  'Do the two newcomers match the check cultivar in spring?',
  '--crop',
  'Lettuce',
  '--season',
  'spring 2027',
  '--factor',
  'cultivar=cobalt-wren,russet-plover,slate-egret',
  '--check',
  'cobalt-wren',
  ...['T1', 'T2', 'T3', 'T4'].flatMap((id) => ['--container', `${id}=3x3`]),
  '--allot',
  'position',
  '--seed',
  '8812',
];

test('plan proposes, writes a folder that check passes, and draws the same again from the seed', async () => {
  const folder = await temporaryFolder();
  const [first, second] = [join(folder, 'spring-lettuce-2027'), join(folder, 'spring-lettuce-again')];
  const made = await runCommand([...lettuce, first]);
  expect(made.stderr).toBe('');
  expect(made.code).toBe(0);
  expect(made.stdout).toContain('1. Randomised blocks, each container a block');
  expect(made.stdout).toMatch(/On 30 error degrees of freedom, a difference of \d+% of the mean/);
  expect((await readdir(first)).sort()).toEqual(['harvest.csv', 'layout.csv', 'trial.yaml', 'versions']);
  const check = await runCommand(['check', first]);
  expect(check.stdout + check.stderr).toContain('0 errors, 0 warnings');
  await runCommand([...lettuce, second]);
  const layout = (of: string) => readFile(join(of, 'layout.csv'), 'utf8');
  expect(await layout(second)).toBe(await layout(first));
  // A plan that is bettered before it is published is a promise of its own.
  const yaml = await readFile(join(second, 'trial.yaml'), 'utf8');
  await writeFile(join(second, 'trial.yaml'), yaml.replace(/^title:.*$/m, 'title: Bettered'));
  const released = await runCommand(['release', second, '--note', 'A better title.']);
  expect([released.code, released.stderr]).toEqual([0, '']);
  expect((await readdir(join(second, 'versions'))).sort()).toEqual(['0.1.0', '0.1.1']);
});

test('plan refuses one tank for each treatment in plain words, and ends with 1', async () => {
  const { code, stdout } = await runCommand([
    'plan',
    '--question',
    'Is half strength enough here?',
    '--crop',
    'Lettuce',
    '--season',
    'spring 2027',
    '--factor',
    'strength=half,full',
    '--container',
    'T1=3x4',
    '--container',
    'T2=3x4',
    '--allot',
    'container',
  ]);
  expect(code).toBe(1);
  expect(stdout).toContain(
    'No: one container for each of 2 treatments cannot tell the treatment from the container',
  );
});

test('without options and without a terminal nobody can be asked: a wrong use, with how it is used', async () => {
  const { code, stdout, stderr } = await runCommand(['plan']);
  expect([code, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(/^--crop is missing, such as --crop "Lettuce"\./);
  expect(stderr).toContain('on a terminal it asks for what the options leave out');
});

test('a folder that is there already is never written over', async () => {
  const { code, stderr } = await runCommand([...lettuce, 'content']);
  expect(code).toBe(2);
  expect(stderr).toContain('"content" is there already');
});

describe('a wrong use is told in a sentence with what was found', () => {
  const known = { trials: [], cultivars: [], licence: 'CC0-1.0' };
  const whole = [
    ...lettuce.slice(1),
    '--site',
    'Fernhollow',
    '--setting',
    'rain shelter',
    '--person',
    'Imke Farrant',
  ];
  const without = (option: string) => {
    const at = whole.indexOf(option);
    return [...whole.slice(0, at), ...whole.slice(at + 2)];
  };

  test('a whole set of options is no wrong use', () => {
    const { request, seed, folder } = planOptions(whole, known);
    expect(folder).toBeNull();
    expect(seed).toBe(8812);
    expect(request.containers.map(({ id, rows, columns }) => `${id} ${rows} ${columns}`)).toEqual([
      'T1 3 3',
      'T2 3 3',
      'T3 3 3',
      'T4 3 3',
    ]);
    expect(request.season).toEqual({ year: 2027, name: 'spring' });
    const { variables } = planOptions([...whole, '--record', 'taste', '--tasters', 'A, B'], known).request;
    expect(variables.map(({ id }) => id)).toEqual(['fresh_weight', 'taste_1', 'taste_2']);
    expect(request.title).toBe('Lettuce: cultivar, spring 2027');
  });

  test.each([
    ['no question', without('--question'), '--question is missing'],
    ['no site', without('--site'), '--site and --setting are missing'],
    ['nobody', without('--person'), '--person is missing'],
    ['nothing to allot to', without('--allot'), '--allot is missing'],
    ['a season without a year', [...whole, '--season', 'spring'], 'found "spring"'],
    ['a container without a size', [...whole, '--container', 'T9'], 'found "T9"'],
    ['a factor of one level', [...whole, '--factor', 'feed=a'], 'found "feed=a"'],
    ['a check that is no level', [...whole, '--check', 'blue'], 'found "blue"'],
    ['an unknown unit', [...whole, '--allot', 'row'], '--allot is container, plot, position; found "row"'],
    ['a factor bound to no unit', [...whole, '--factor', 'feed=a,b@tank'], 'found "tank"'],
    ['a plot of one number', [...whole, '--plot', '3'], 'found "3"'],
    ['a variation that is none', [...whole, '--variation', '0'], 'found "0"'],
    ['a size that is none', [...whole, '--sizes', '31,large'], 'found "large"'],
    ['something that cannot be recorded', [...whole, '--record', 'joy'], 'found "joy"'],
    ['a taste of nobody', [...whole, '--record', 'taste'], '--tasters is missing'],
    ['a seed that is none', [...whole, '--seed', '1.5'], '--seed is a whole number; found "1.5"'],
  ])('%s', (_, args, message) => {
    expect(() => planOptions(args, known)).toThrow(message);
  });
});
