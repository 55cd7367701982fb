import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { compareVersions } from '../versions.ts';

const rule: Rule = {
  rule: 'version-not-newest',
  severity: 'error',
  acceptable: false,
  title: 'Version is not the newest release',
  meaning: 'The version says which release of the data the folder holds; releases go up.',
  example: 'version is 1.0.0, but the newest of releases is 1.1.0',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const { version, releases = [] } = metadata.draft;
  if (metadata.lost.has('releases')) return;
  const file = 'trial.yaml';
  for (const [index, release] of releases.entries()) {
    const before = releases[index - 1];
    if (before === undefined) continue;
    const place = metadata.place(['releases', index, 'version']);
    if (compareVersions(release.version, before.version) <= 0) {
      const message = say(
        'release {version} stands after {before}; list releases from the oldest to the newest, each once',
        { version: release.version, before: before.version },
      );
      report(rule, { file, place, found: release.version, message });
    } else if (release.date < before.date) {
      const message = say('release {version} is dated {date}, before {before} on {earlier}', {
        version: release.version,
        date: release.date,
        before: before.version,
        earlier: before.date,
      });
      report(rule, {
        file,
        place: metadata.place(['releases', index, 'date']),
        found: release.date,
        message,
      });
    }
  }
  const newest = [...releases].sort((a, b) => compareVersions(a.version, b.version)).at(-1)?.version;
  if (version === undefined || newest === undefined || version === newest) return;
  const message = say(
    'version is {version}, but the newest of releases is {newest}; write the same in both',
    {
      version,
      newest,
    },
  );
  report(rule, { file, place: metadata.place(['version']), found: version, expected: newest, message });
}
