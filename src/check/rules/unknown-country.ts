import { say } from '../../model/say.ts';
import { countryCodes, mistakenCodes } from '../country-codes.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-country',
  severity: 'warning',
  acceptable: true,
  title: 'Unknown country',
  meaning:
    'A country is given by its two letters in ISO 3166-1, which whoever gathers trials goes by. It is not always the one that cars or web addresses show: that of the United Kingdom is GB.',
  example: 'site.country is "UK", which is no country code of ISO 3166-1; did you mean "GB"?',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const country = metadata.draft.site?.country;
  if (country === undefined || countryCodes.has(country)) return;
  const meant = Object.hasOwn(mistakenCodes, country) ? mistakenCodes[country]! : null;
  const values = { country: showText(country) };
  const message =
    meant === null
      ? say('site.country is {country}, which is no country code of ISO 3166-1', values)
      : say('site.country is {country}, which is no country code of ISO 3166-1; did you mean "{near}"?', {
          ...values,
          near: meant,
        });
  report(rule, {
    file: 'trial.yaml',
    place: metadata.place(['site', 'country']),
    found: country,
    expected: meant,
    message,
  });
}
