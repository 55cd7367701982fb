import { say } from '../../model/say.ts';
import { decodeUtf8 } from '../../read/utf8.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'text-cut-off',
  severity: 'warning',
  acceptable: true,
  title: 'Text cut off at a #',
  meaning:
    'In YAML a # after a space begins a comment, which is not published. A text that holds one stands in quotes.',
  example: 'title ends before "#3 of the year", which YAML takes for a comment; put the whole text in quotes',
  check,
};
export default rule;

/** A key of text whose value stands bare, and a # right before a letter or a digit; who comments leaves a space. */
const bare =
  /^[ -]*(title|question|summary|name|what|note|caption|alt|reason):[ ]+[^\s"'|>[{&*!#].*?[ ](#[\p{L}\p{N}].*)$/u;

function check({ files }: Facts, report: Report): void {
  const file = 'trial.yaml';
  const bytes = files.get(file);
  const text = bytes === undefined ? null : decodeUtf8(bytes).text;
  for (const [index, line] of (text ?? '').split(/\r?\n/).entries()) {
    const [, key, rest] = bare.exec(line) ?? [];
    if (key === undefined || rest === undefined) continue;
    const column = [...line.slice(0, line.length - rest.length)].length + 1;
    const message = say(
      '{key} ends before {rest}, which YAML takes for a comment; put the whole text in quotes',
      { key, rest: showText(rest) },
    );
    report(rule, { file, place: { line: index + 1, column }, found: rest, message });
  }
}
