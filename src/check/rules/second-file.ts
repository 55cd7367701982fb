import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import { isSpreadsheet, isTrialFile, meantFile } from './misnamed-file.ts';

const rule: Rule = {
  rule: 'second-file',
  severity: 'warning',
  acceptable: true,
  title: 'Two files of one purpose',
  meaning:
    'Beside a file lies another with almost its name, as a copy or a second download is named. Only the one with the right name is read, and the other may be the newer.',
  example:
    '"harvest (1).csv" lies beside harvest.csv and is not read; keep the right one as harvest.csv, and delete the other',
  check,
};
export default rule;

function check({ files }: Facts, report: Report): void {
  for (const path of files.keys()) {
    if (path.includes('/') || isTrialFile(path) || isSpreadsheet(path)) continue;
    const best = meantFile(path);
    if (best === null || !files.has(best)) continue;
    const message = say(
      '{path} lies beside {meant} and is not read; keep the right one as {meant}, and delete the other',
      { path: showText(path), meant: best },
    );
    report(rule, { file: path, found: path, expected: best, message, where: path });
  }
}
