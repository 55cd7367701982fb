import { expect, test } from 'vitest';
import { countTests } from '../../src/commands/vitest-tally.ts';

const report = (testResults: unknown[], failed = 0) =>
  JSON.stringify({
    numPassedTests: 3,
    numFailedTests: failed,
    numPendingTests: 1,
    numTodoTests: 0,
    testResults,
  });
const good = { status: 'passed', assertionResults: [{ status: 'passed' }] };

test('counts passed, failed and skipped tests', () => {
  const bad = { status: 'failed', assertionResults: [{ status: 'failed' }, { status: 'failed' }] };
  expect(countTests(report([good, bad], 2), 1)).toEqual({ passed: 3, failed: 2, skipped: 1 });
});

test('counts a file that could not be loaded as one failed', () => {
  const unloaded = { status: 'failed', assertionResults: [] };
  expect(countTests(report([good, unloaded]), 1)).toEqual({ passed: 3, failed: 1, skipped: 1 });
});

test('counts an error outside of all tests as one failed', () => {
  expect(countTests(report([good]), 1)).toEqual({ passed: 3, failed: 1, skipped: 1 });
});

test('counts a run without a report or without a test as failed', () => {
  expect(countTests('', 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  expect(countTests('', 1)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});
