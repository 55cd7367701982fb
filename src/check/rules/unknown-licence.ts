import licences from 'spdx-license-ids/index.json' with { type: 'json' };
import deprecated from 'spdx-license-ids/deprecated.json' with { type: 'json' };
import { say } from '../../model/say.ts';
import type { Place } from '../../read/place.ts';
import type { Facts } from '../facts.ts';
import { nearest } from '../nearest.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-licence',
  severity: 'error',
  acceptable: false,
  title: 'Unknown licence',
  meaning:
    'A licence is named by its SPDX identifier, so that people and programs know what they may do with the data.',
  example: '"CC-BY" is no SPDX licence identifier; did you mean "CC-BY-4.0"?',
  check,
};
export default rule;

const known = new Set<string>([...licences, ...deprecated]);

/** The licences that data are mostly given under; a guess looks among these first. */
const usual = [
  'CC-BY-4.0',
  'CC0-1.0',
  'CC-BY-SA-4.0',
  'CC-BY-NC-4.0',
  'ODC-By-1.0',
  'ODbL-1.0',
  'PDDL-1.0',
  'MIT',
];

function guess(licence: string): string | null {
  const letters = licence.toUpperCase().replaceAll(/[^A-Z]+/g, '');
  const sameLetters = usual.find((one) => one.toUpperCase().replaceAll(/[^A-Z]+/g, '') === letters);
  return sameLetters ?? nearest(licence, usual) ?? nearest(licence, licences);
}

export function reportUnknownLicence(report: Report, file: string, place: Place, licence: string): void {
  if (known.has(licence)) return;
  const best = guess(licence);
  const shown = { licence: showText(licence) };
  report(rule, {
    file,
    place,
    found: licence,
    expected: best,
    message:
      best === null
        ? say('{licence} is no SPDX licence identifier; write one, such as CC-BY-4.0 or CC0-1.0', shown)
        : say('{licence} is no SPDX licence identifier; did you mean "{name}"?', { ...shown, name: best }),
  });
}

function check({ metadata }: Facts, report: Report): void {
  const { licence } = metadata.draft;
  if (licence !== undefined) reportUnknownLicence(report, 'trial.yaml', metadata.place(['licence']), licence);
}
