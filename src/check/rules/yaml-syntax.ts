import type { Report, Rule } from '../rule.ts';
import { say } from '../../model/say.ts';
import type { YamlFault } from '../../read/yaml.ts';
import { cut, showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'yaml-syntax',
  severity: 'error',
  acceptable: false,
  title: 'Not YAML',
  meaning: 'The file breaks the rules of YAML, so that nothing in it can be read with certainty.',
  example: 'the line "title: Lettuce: four tanks" is not YAML: a value that holds ": " must stand in quotes',
};
export default rule;

/** The library's words for the commonest faults, in a grower's; some mean two things, told apart by the line. */
const words: readonly [RegExp, () => string, isSo?: (fault: YamlFault) => boolean][] = [
  [
    /nested mappings are not allowed in compact/i,
    () =>
      say(
        'the line below is indented deeper, as if it belonged to this value; begin both in the same column',
      ),
    ({ text }) => !/:\s.*:\s/.test(text ?? ''),
  ],
  [/nested mappings are not allowed in compact/i, () => say('a value that holds ": " must stand in quotes')],
  [/missing closing "/i, () => say('a double quote is opened and never closed')],
  [/missing closing '/i, () => say('a single quote is opened and never closed')],
  [
    /flow (sequence|map) in block collection must be sufficiently/i,
    () => say('a bracket is opened and never closed'),
  ],
  [/must end with a \]/i, () => say('a square bracket is opened and never closed')],
  [/must end with a \}/i, () => say('a curly bracket is opened and never closed')],
  [
    /implicit keys need to be on a single line|implicit map keys need to be followed/i,
    () => say('a key needs a colon and a space after it'),
  ],
  [
    /sequence item without|must be (sufficiently )?indented|bad indentation|block sequence may not/i,
    () => say('its indentation does not fit the lines above'),
  ],
  [
    /all mapping items must start at the same column/i,
    () => say('keys of one mapping must begin in the same column'),
  ],
  [
    /all sequence items must start at the same column/i,
    () => say('entries of one list must begin in the same column'),
  ],
  [/unresolved tag/i, () => say('a value that begins with ! must stand in quotes')],
  [
    /unresolved alias|aliased anchor not found/i,
    () => say('a value that begins with * must stand in quotes'),
  ],
  [
    /plain value cannot start with/i,
    () => say('a value that begins with a special character must stand in quotes'),
  ],
  [/with stringkeys, all keys must be strings/i, () => say('keys must be plain words')],
  [
    /unexpected scalar at node end/i,
    () => say('its indentation does not fit the lines above'),
    ({ place }) => place?.column === 1,
  ],
  [
    /unexpected scalar at node end/i,
    () => say('text follows a value that has ended; put the whole value in quotes'),
  ],
  [/alias node must not/i, () => say('a value that begins with & or * must stand in quotes')],
  [/missing directives-end/i, () => say('a line that begins with % must stand in quotes')],
  [/nested too deep|call stack/i, () => say('it is nested too deep to read')],
];

export function reportYamlSyntax(report: Report, file: string, fault: YamlFault): void {
  const reason =
    fault.kind === 'several documents'
      ? say('a line of --- begins a second document; keep one')
      : (words.find(([pattern, , isSo]) => pattern.test(fault.detail) && (isSo?.(fault) ?? true))?.[1]() ??
        say('{detail}', { detail: cut(fault.detail) }));
  const message =
    fault.text === null
      ? say('the file is not YAML: {reason}', { reason })
      : say('the line {line} is not YAML: {reason}', { line: showText(fault.text.trim()), reason });
  report(rule, { file, place: fault.place, found: fault.text, message });
}
