import { cp, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/model/problem.ts';
import { annotation } from '../../src/commands/annotation.ts';
import { runCommand } from '../support/site.ts';

const broken = 'test/broken/zero-without-status';

describe('check', () => {
  test('prints a line a problem and a count, and ends with 1 on an error', async () => {
    const { code, stdout } = await runCommand(['check', broken]);
    expect(code).toBe(1);
    expect(stdout).toMatch(
      /^harvest\.csv:\d+:\d+ {2}error {2}zero-without-status {2}.+\n1 error, 0 warnings, 0 notes\n$/,
    );
  });

  test('tells of what a fact sheet asks of the findings and they do not hold, in the same form', async () => {
    const { code, stdout } = await runCommand(['check', 'test/broken/sheet-no-value']);
    expect(code).toBe(1);
    expect(stdout).toMatch(
      /^factsheet\.mdx:1:22 {2}error {2}sheet-no-value {2}.+\nfactsheet\.mdx:3:1 {2}error {2}sheet-no-value {2}.+\n2 errors,/,
    );
  });

  test('tells of more problems than a call may have arguments', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'tankside-check-'));
    try {
      await cp('content', folder, { recursive: true });
      // Of six kinds, most of which are not so common that they would be told once for the whole column.
      const faults = ['12O', '12 g', 'heavy', '=12', '"12,5"', '-12'];
      const rows = faults.map((fault) => `T1,1,1,${fault},\n`.repeat(40_000)).join('');
      const harvest = join(folder, 'trials', 'four-lettuces-2024', 'harvest.csv');
      await writeFile(harvest, `container,row,column,fresh_weight,remark\n${rows}`);
      const { code, stdout, stderr } = await runCommand(['check', folder]);
      expect(code, stderr).toBe(1);
      expect(stdout.match(/ {2}weight-not-a-number {2}/g)?.length).toBeGreaterThan(150_000);
    } finally {
      await rm(folder, { recursive: true });
    }
  }, 60_000);

  test('gives programs the problems as JSON and nothing else', async () => {
    const { code, stdout } = await runCommand(['check', broken, '--json']);
    expect(code).toBe(1);
    const [problem] = JSON.parse(stdout) as Problem[];
    expect(problem).toMatchObject({ rule: 'zero-without-status', severity: 'error', file: 'harvest.csv' });
    expect(Object.keys(problem!)).toEqual(
      expect.arrayContaining([
        'rule',
        'severity',
        'file',
        'line',
        'column',
        'found',
        'expected',
        'message',
        'hint',
      ]),
    );
  });

  test("gives a Git host's checks a remark at the file's place", async () => {
    const { stdout } = await runCommand(['check', broken, '--github']);
    expect(stdout).toMatch(
      /^::error file=test\/broken\/zero-without-status\/harvest\.csv,line=\d+,col=\d+,title=zero-without-status::.+\n$/,
    );
  });

  test('escapes what would end a remark', () => {
    const problem: Problem = {
      rule: 'a,b:c',
      severity: 'note',
      file: 'x:y,z.csv',
      line: null,
      column: null,
      found: null,
      expected: null,
      message: '50% of\nit',
      hint: null,
      where: null,
    };
    expect(annotation(problem, process.cwd())).toBe(
      '::notice file=x%3Ay%2Cz.csv,title=a%2Cb%3Ac::50%25 of%0Ait',
    );
  });

  test('is used wrongly with both forms, an unknown option, or a folder that is not there', async () => {
    for (const args of [['--json', '--github'], ['--nonsense'], ['no/such/folder'], ['a', 'b']]) {
      const { code, stdout, stderr } = await runCommand(['check', ...args]);
      expect(code).toBe(2);
      expect(stdout).toBe('');
      expect(stderr).toContain('Usage');
    }
  });
});
