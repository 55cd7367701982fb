import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { compareVersions } from '../versions.ts';

const rule: Rule = {
  rule: 'release-before-cut',
  severity: 'warning',
  acceptable: true,
  title: 'Release before the last cut',
  meaning:
    'The newest release is dated before the last cut, whose weights it holds, or an older one before the trial began.',
  example: 'release 1.0.0 is dated 2025-02-11, before the last cut on 2025-10-20',
  check,
};
export default rule;

function check({ metadata, today }: Facts, report: Report): void {
  const { status, releases = [], dates } = metadata.draft;
  const last = dates?.cuts?.at(-1);
  if (status !== 'finished' || last === undefined || last > today || metadata.lost.has('releases')) return;
  const newest = [...releases.entries()].sort(([, a], [, b]) => compareVersions(a.version, b.version)).at(-1);
  reportBeforeSowing({ metadata }, newest?.[0], report);
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

/** Before a trial its plan may be released, as a version 0; weights may not. */
function reportBeforeSowing(
  { metadata }: Pick<Facts, 'metadata'>,
  newest: number | undefined,
  report: Report,
): void {
  const { releases = [], dates } = metadata.draft;
  const begun = dates?.sown ?? dates?.germinated ?? dates?.transplanted ?? dates?.cuts?.[0];
  for (const [index, { version, date }] of releases.entries()) {
    if (index === newest || begun === undefined || date >= begun || version.startsWith('0.')) continue;
    const message = say(
      'release {version} is dated {date}, before the trial began on {begun}; is the date right?',
      {
        version,
        date,
        begun,
      },
    );
    const place = metadata.place(['releases', index, 'date']);
    report(rule, { file: 'trial.yaml', place, found: date, message });
  }
}
