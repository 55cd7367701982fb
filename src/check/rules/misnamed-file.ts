import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'misnamed-file',
  severity: 'error',
  acceptable: false,
  title: 'File with almost the right name',
  meaning: 'A file of another name is passed over, and with it what it says.',
  example: '"Layout.CSV" looks like layout.csv; rename it',
  check,
};
export default rule;

const known = ['trial.yaml', 'layout.csv', 'harvest.csv', 'readings.csv', 'factsheet.mdx'];

function check({ files, metadata }: Facts, report: Report): void {
  for (const path of files.keys()) {
    if (path.includes('/') || known.includes(path)) continue;
    const best = nearest(path, known);
    if (best === null || files.has(best)) continue;
    // A finished trial without its harvest is told of the name where the file is missed.
    if (best === 'harvest.csv' && metadata.draft.status === 'finished') continue;
    report(rule, {
      file: path,
      found: path,
      expected: best,
      message: `${showText(path)} looks like ${best}; rename it`,
    });
  }
}
