import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { frozenVersions, isVersion, sumsFile } from '../frozen-versions.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'frozen-without-sums',
  severity: 'note',
  acceptable: true,
  title: 'Frozen version without sums',
  meaning: 'Without the SHA-256 of its files, nobody can tell whether a frozen version is still as it was.',
  example:
    'versions/1.0.0 has no SHA256SUMS, so that nobody can tell whether it was altered; make it with: sha256sum * > SHA256SUMS',
  check,
};
export default rule;

function check({ files }: Facts, report: Report): void {
  for (const { version, files: frozen } of frozenVersions(files)) {
    if (!isVersion(version) || frozen.has(sumsFile)) continue;
    const folder = `versions/${version}`;
    const message = say(
      '{folder} has no {sums}, so that nobody can tell whether it was altered; if it was not, make it in that folder with: sha256sum * > {sums}',
      { folder, sums: sumsFile },
    );
    report(rule, { file: folder, expected: sumsFile, message });
  }
}
