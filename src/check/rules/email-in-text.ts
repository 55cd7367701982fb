import { say } from '../../model/say.ts';
import { decodeUtf8 } from '../../read/utf8.ts';
import type { Path } from '../../read/yaml.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'email-in-text',
  severity: 'warning',
  acceptable: false,
  title: 'E-mail address in a text that is published',
  meaning:
    'Remarks, notes and summaries are published as they stand, and robots collect the e-mail addresses in them. A person’s e-mail belongs under people, where it is published only if they allow it.',
  example: 'there is an e-mail address in this text, which is published as it stands; take it out',
  check,
};
export default rule;

const address = /[\p{L}\p{N}._%+'-]+@[\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)+/u;

/** The address itself is not repeated: what is reported here is published too. */
const messageOf = (): string =>
  say(
    'there is an e-mail address in this text, which is published as it stands; take it out, or write it as email under people',
  );

function check({ files, metadata }: Facts, report: Report): void {
  const look = (value: unknown, path: Path): void => {
    if (typeof value === 'string') {
      const isPersons = path[0] === 'people' && path.at(-1) === 'email';
      if (!isPersons && address.test(value))
        report(rule, { file: 'trial.yaml', place: metadata.place(path), message: messageOf() });
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) {
        look(inner, [...path, Array.isArray(value) ? Number(key) : key]);
      }
    }
  };
  look(metadata.draft, []);
  for (const [path, bytes] of files) {
    if (!/^(?:(?:layout|harvest|readings)\.csv|factsheet[^/]*\.mdx)$/.test(path)) continue;
    // Few files hold the sign at all.
    if (!bytes.includes(0x40)) continue;
    for (const [index, line] of (decodeUtf8(bytes).text ?? '').split(/\r\n|\n|\r/).entries()) {
      const at = line.search(address);
      if (at >= 0)
        report(rule, { file: path, place: { line: index + 1, column: at + 1 }, message: messageOf() });
    }
  }
}
