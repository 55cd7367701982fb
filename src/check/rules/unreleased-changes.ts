import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { differingFiles, frozenVersions } from '../frozen-versions.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'unreleased-changes',
  severity: 'warning',
  acceptable: true,
  title: 'Changed since the last release',
  meaning:
    'One version number must not stand for two contents: whoever cited the release would find other numbers under it.',
  example:
    'harvest.csv differs from versions/1.1.0, which was released; release the change: npm run -s tankside -- release <trial folder> --note "what changed"',
  check,
};
export default rule;

function check({ files, metadata }: Facts, report: Report): void {
  const { version, status } = metadata.draft;
  // A plan is frozen as it was promised; what is done otherwise is told once the trial is finished.
  if (status !== 'finished') return;
  const frozen = frozenVersions(files).find((one) => one.version === version);
  if (frozen === undefined) return;
  for (const name of differingFiles(files, frozen.files)) {
    const values = {
      file: name,
      version: frozen.version,
      command: say('npm run -s tankside -- release <trial folder> --note "what changed"'),
    };
    const message = !files.has(name)
      ? say('{file} is gone since {version} was released; release the change: {command}', values)
      : frozen.files.has(name)
        ? say('{file} differs since {version} was released; release the change: {command}', values)
        : say('{file} is new since {version} was released; release the change: {command}', values);
    report(rule, { file: name, message });
  }
}
