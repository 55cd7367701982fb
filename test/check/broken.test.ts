import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { rules } from '../../src/check/rules.ts';
import { readTrialFolder } from '../../src/read/folder.ts';
import { cultivars } from './good-folder.ts';

/** `<rule>` or `<rule>--<variant>`: the smallest folder with the fault, and expected.txt with what is printed. */
const broken = new URL('../broken/', import.meta.url);
const names = readdirSync(broken).sort();
const ruleOf = (name: string): string => name.split('--')[0]!;

describe.each(names)('the broken folder %s', (name) => {
  it('is reported word for word as expected', async () => {
    const folder = new URL(`${encodeURIComponent(name)}/`, broken);
    const files = await readTrialFolder(folder.pathname.replaceAll('%20', ' '));
    const { trial, problems } = checkTrial(name, files, { cultivars, today: '2026-01-15', prefix: '' });
    const expected = readFileSync(new URL('expected.txt', folder), 'utf8');
    expect(`${problems.map(printProblem).join('\n')}\n`).toBe(expected);
    const found = problems.find(({ rule }) => rule === ruleOf(name));
    expect(found).toBeDefined();
    expect(trial === null).toBe(problems.some(({ severity }) => severity === 'error'));
  });
});

describe('the rules', () => {
  it.each(rules.map(({ rule }) => rule))('%s has a broken folder', (rule) => {
    // A link that leaves the folder cannot lie in a repository that every system can copy; folder.test.ts makes one.
    if (rule === 'unread-file') return;
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
