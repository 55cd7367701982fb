import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import type { Path } from '../../read/yaml.ts';
import { pathInWords } from '../refusal.ts';

const rule: Rule = {
  rule: 'blank-text',
  severity: 'error',
  acceptable: false,
  title: 'Text of blanks',
  meaning: 'A text of nothing but blanks says nothing, and shows as a gap on the page.',
  example: 'question is blank; write it, or delete the key',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  reportBlankTexts(report, 'trial.yaml', metadata.draft, (path) => metadata.place(path));
}

/** Reports texts of a YAML file that are nothing but spaces. */
export function reportBlankTexts(
  report: Report,
  file: string,
  content: unknown,
  place: (path: Path) => Place,
): void {
  const walk = (value: unknown, path: Path): void => {
    // The alternative text of a photograph has its own words, and so has what the schema refuses as too short.
    if (
      typeof value === 'string' &&
      (value !== '' || file === 'trial.yaml') &&
      value.trim() === '' &&
      path.at(-1) !== 'alt' &&
      path.at(-1) !== 'delimiter'
    ) {
      const message = say('{key} is blank; write it, or delete the key', { key: pathInWords(path) });
      report(rule, { file, place: place(path), found: value, message });
    } else if (typeof value === 'object' && value !== null) {
      const entries = Array.isArray(value)
        ? value.map((one, index): [number, unknown] => [index, one])
        : Object.entries(value);
      for (const [key, inner] of entries) walk(inner, [...path, key]);
    }
  };
  walk(content, []);
}
