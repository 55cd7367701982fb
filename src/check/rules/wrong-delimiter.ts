import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'wrong-delimiter',
  severity: 'error',
  acceptable: false,
  title: 'Another sign between cells',
  meaning:
    'Spreadsheets of many countries write semicolons or tabs between cells. Say so in trial.yaml, or save with commas.',
  example: 'cells are separated by ";", not ","; write harvest: {delimiter: ";"} in trial.yaml',
};
export default rule;

const names: Readonly<Record<string, () => string>> = {
  ',': () => say('commas'),
  ';': () => say('semicolons'),
  '\t': () => say('tabs'),
  '|': () => say('bars'),
};

/** The sign that a heading line is really separated by, or null where the declared one will do. */
export function actualDelimiter(headings: string, declared: string): string | null {
  if (headings.includes(declared)) return null;
  const counts = Object.keys(names).map((sign): [string, number] => [sign, headings.split(sign).length - 1]);
  const [sign, count] = counts.sort((a, b) => b[1] - a[1])[0] ?? [',', 0];
  return count > 0 ? sign : null;
}

export function reportWrongDelimiter(
  report: Report,
  file: string,
  actual: string,
  declared: string,
  text: string,
): void {
  const sign = actual === '\t' ? '"\\t"' : `"${actual}"`;
  const found = names[actual]?.() ?? showText(actual);
  const expected = names[declared]?.() ?? declared;
  const hasDecimalCommas =
    actual !== ',' && new RegExp(`[${actual}]"?\\d+,\\d+"?(?:[${actual}\\n]|$)`).test(text);
  const decimal = hasDecimalCommas ? ', decimal: ","' : '';
  report(rule, {
    file,
    place: { line: 1, column: 1 },
    found,
    expected,
    message: say(
      'cells are separated by {found}, not by {declared}; write {harvest} in trial.yaml, or save the file with {declared}',
      { found, declared: expected, harvest: `harvest: {delimiter: ${sign}${decimal}}` },
    ),
  });
}

/** The line `sep=;` that some spreadsheets put before the headings. */
export function reportSeparatorLine(report: Report, file: string): void {
  report(rule, {
    file,
    place: { line: 1, column: 1 },
    message: say('line 1 ("sep=") is a spreadsheet\'s own and no heading; delete it'),
  });
}
