import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import type { Path } from '../../read/yaml.ts';

const rule: Rule = {
  rule: 'date-order',
  severity: 'error',
  acceptable: false,
  title: 'Dates out of order',
  meaning: 'A plant is sown, comes up, is transplanted and then cut, and cuts follow each other.',
  example: 'dates.transplanted is 2025-08-12, before dates.sown on 2025-08-25',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const { sown, germinated, transplanted, cuts = [] } = metadata.draft.dates ?? {};
  const steps: [string, Path, string | undefined][] = [
    ['dates.sown', ['dates', 'sown'], sown],
    ['dates.germinated', ['dates', 'germinated'], germinated],
    ['dates.transplanted', ['dates', 'transplanted'], transplanted],
    ...cuts.map((date, index): [string, Path, string] => [
      say('cut {number}', { number: index + 1 }),
      ['dates', 'cuts', index],
      date,
    ]),
  ];
  let [beforeName, beforePath, before] = steps[0]!;
  for (const [name, path, date] of steps.slice(1)) {
    if (date === undefined) continue;
    const areCuts = beforePath[1] === 'cuts' && path[1] === 'cuts';
    if (before !== undefined && (date < before || (areCuts && date === before))) {
      const values = { name, date, other: beforeName, day: before };
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(path),
        found: date,
        message:
          date === before
            ? say('{name} is {date}, the same day as {other} on {day}; correct one of the two', values)
            : say('{name} is {date}, before {other} on {day}; correct one of the two', values),
      });
    } else [beforeName, beforePath, before] = [name, path, date];
    if (before === undefined) [beforeName, beforePath, before] = [name, path, date];
  }
}
