import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { compareVersions } from '../versions.ts';

const rule: Rule = {
  rule: 'release-before-cut',
  severity: 'warning',
  acceptable: true,
  title: 'Release before the last cut',
  meaning: 'The newest release is dated before the last cut, whose weights it holds.',
  example: 'release 1.0.0 is dated 2025-02-11, before the last cut on 2025-10-20',
  check,
};
export default rule;

function check({ metadata, today }: Facts, report: Report): void {
  const { status, releases = [], dates } = metadata.draft;
  const last = dates?.cuts?.at(-1);
  if (status !== 'finished' || last === undefined || last > today || metadata.lost.has('releases')) return;
  const newest = [...releases.entries()].sort(([, a], [, b]) => compareVersions(a.version, b.version)).at(-1);
  if (newest === undefined || newest[1].date >= last) return;
  const [index, { version, date }] = newest;
  const message = say(
    'release {version} is dated {date}, before the last cut on {last}; is the date right?',
    { version, date, last },
  );
  report(rule, {
    file: 'trial.yaml',
    place: metadata.place(['releases', index, 'date']),
    found: date,
    message,
  });
}
