import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printProblem } from '../../src/check/print-problem.ts';
import { rules } from '../../src/check/rules.ts';
import { names, pathOf, problemsOf, ruleOf } from './broken-folders.ts';

describe.each(names)('the broken folder %s', (name) => {
  it('is reported word for word as expected', async () => {
    const { trials, own, problems } = await problemsOf(name);
    const expected = readFileSync(join(pathOf(name), 'expected.txt'), 'utf8');
    expect(`${problems.map(printProblem).join('\n')}\n`).toBe(expected);
    expect(problems.map(({ rule }) => rule)).toContain(ruleOf(name));
    // What a sheet asks of the findings, and a sheet across trials, stop the build and leave the trial itself sound.
    expect(trials.includes(null)).toBe(own.some(({ severity }) => severity === 'error'));
  });
});

describe('the rules', () => {
  it.each(rules.map(({ rule }) => rule))('%s has a broken folder', (rule) => {
    // A link that leaves the folder cannot lie in a repository that every system can copy; folder.test.ts makes one.
    // Neither can an archive that is none; check-taken.test.ts gives one.
    if (rule === 'unread-file' || rule === 'unread-archive') return;
    expect(names.map(ruleOf)).toContain(rule);
  });

  it('have names, each used once, and say what they mean', () => {
    expect(new Set(rules.map(({ rule }) => rule)).size).toBe(rules.length);
    for (const { rule, title, meaning, example } of rules) {
      expect(rule).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(title.length).toBeGreaterThan(5);
      expect(meaning).toMatch(/\.$/);
      expect(example.length).toBeGreaterThan(10);
    }
  });
});
