/** Counts the tests of a Vitest run from its JSON report. */

export interface Tally {
  passed: number;
  failed: number;
  skipped: number;
}

interface Report {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  testResults: { status: string; assertionResults: { status: string }[] }[];
}

/**
 * A file that could not even be loaded holds no tests, and counts as one failed; so does a run that
 * ended badly without any test to blame, such as by an error outside of all tests.
 * @param text the report, empty where there is none
 * @param code Vitest's exit code
 */
export function countTests(text: string, code: number): Tally {
  const tally = text === '' ? { passed: 0, failed: 0, skipped: 0 } : read(text);
  if (code !== 0 && tally.failed === 0) tally.failed = 1;
  if (tally.passed + tally.failed + tally.skipped === 0) tally.failed = 1;
  return tally;
}

function read(text: string): Tally {
  const report = JSON.parse(text) as Report;
  const unloaded = report.testResults.filter(({ status, assertionResults }) => {
    return status === 'failed' && !assertionResults.some((test) => test.status === 'failed');
  });
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}
