import { say } from '../../model/say.ts';
import { sha256 } from '../../read/sha256.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'source-altered',
  severity: 'warning',
  acceptable: true,
  title: 'Original spreadsheet that was changed',
  meaning:
    'harvest.csv was brought in from a spreadsheet that is kept as it was. Where that has changed since, the two may no longer say the same.',
  example:
    'source/weights.xlsx is not the file that harvest.csv was brought in from; bring it in again, or put the original back',
  check,
};
export default rule;

function check({ metadata, files }: Facts, report: Report): void {
  const told = new Set<string>();
  for (const [index, { file, sha256: sum }] of (metadata.draft.sources ?? []).entries()) {
    const bytes = files.get(file);
    if (bytes === undefined || told.has(file) || sha256(bytes) === sum) continue;
    told.add(file);
    report(rule, {
      file: 'trial.yaml',
      place: metadata.place(['sources', index, 'sha256']),
      found: sum,
      expected: sha256(bytes),
      message: say(
        '{file} is not the file that harvest.csv was brought in from; bring it in again, or put the original back',
        { file: showText(file) },
      ),
    });
  }
}
