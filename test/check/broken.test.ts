import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checkAcrossTrials } from '../../src/check/check-across-trials.ts';
import { checkTrial } from '../../src/check/check-trial.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { rules } from '../../src/check/rules.ts';
import type { Problem } from '../../src/model/problem.ts';
import type { Trial } from '../../src/model/trial.ts';
import { listTrials, readTrialFolder } from '../../src/read/folder.ts';
import { cultivars } from './good-folder.ts';

/** `<rule>` or `<rule>--<variant>`: the smallest folder with the fault, and expected.txt with what is printed. */
const broken = new URL('../broken/', import.meta.url);
const names = readdirSync(broken).sort();
const ruleOf = (name: string): string => name.split('--')[0]!;

const pathOf = (name: string): string => fileURLToPath(new URL(`${encodeURIComponent(name)}/`, broken));
const base = { cultivars, today: '2026-01-15' };

/** All problems of a broken folder: a trial's, or (where it holds trials/) those of a content folder. */
async function problemsOf(name: string): Promise<{ problems: Problem[]; trials: (Trial | null)[] }> {
  const path = pathOf(name);
  const ids = await listTrials(path);
  if (ids.length === 0) {
    const { trial, problems } = checkTrial(name, await readTrialFolder(path), { ...base, prefix: '' });
    return { problems, trials: [trial] };
  }
  const checked = [];
  for (const id of ids) {
    checked.push(
      checkTrial(id, await readTrialFolder(join(path, 'trials', id)), { ...base, prefix: 'trials/' }),
    );
  }
  const trials = checked.map(({ trial }) => trial);
  const sound = trials.filter((trial) => trial !== null);
  const across = checkAcrossTrials(sound, cultivars, 'trials/').problems;
  return { problems: [...checked.flatMap(({ problems }) => problems), ...across], trials };
}

describe.each(names)('the broken folder %s', (name) => {
  it('is reported word for word as expected', async () => {
    const { trials, problems } = await problemsOf(name);
    const expected = readFileSync(join(pathOf(name), 'expected.txt'), 'utf8');
    expect(`${problems.map(printProblem).join('\n')}\n`).toBe(expected);
    expect(problems.map(({ rule }) => rule)).toContain(ruleOf(name));
    expect(trials.includes(null)).toBe(problems.some(({ severity }) => severity === 'error'));
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
