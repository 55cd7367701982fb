import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { YamlFault } from '../../read/yaml.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'yaml-tab',
  severity: 'error',
  acceptable: false,
  title: 'Tab in the indentation',
  meaning: 'YAML is indented with spaces only; a tab looks the same and breaks it.',
  example: 'the line "\\tname: Lettuce" is indented with a tab; use spaces',
};
export default rule;

export function reportYamlTab(report: Report, file: string, fault: YamlFault): void {
  const line = showText(fault.text ?? '');
  const message = say('the line {line} is indented with a tab; use spaces', { line });
  report(rule, { file, place: fault.place, found: fault.text, expected: say('spaces'), message });
}
