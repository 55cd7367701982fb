import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'season-year',
  severity: 'warning',
  acceptable: true,
  title: 'Season of another year',
  meaning:
    'The season bears the year of the harvest, by which trials are compared; here its cuts fall in another.',
  example: 'season.year is 2024, but the last cut was in 2025',
  check,
};
export default rule;

function check({ metadata, today }: Facts, report: Report): void {
  const { season, dates } = metadata.draft;
  const last = dates?.cuts?.at(-1);
  if (season === undefined || last === undefined || last > today) return;
  const years = [last, dates?.cuts?.[0] ?? last].map((date) => Number(date.slice(0, 4)));
  if (years.includes(season.year)) return;
  const message = say('season.year is {year}, but the last cut was in {harvested}', {
    year: season.year,
    harvested: String(years[0]),
  });
  const place = metadata.place(['season', 'year']);
  report(rule, {
    file: 'trial.yaml',
    place,
    found: String(season.year),
    expected: String(years[0]),
    message,
  });
}
