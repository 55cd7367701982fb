import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { YamlFault } from '../../read/yaml.ts';

const rule: Rule = {
  rule: 'yaml-aliases',
  severity: 'error',
  acceptable: false,
  title: 'Too many aliases',
  meaning: 'Aliases that refer to aliases can swell a small file to more than a computer holds.',
  example: 'the aliases (*name) of this file unfold to more than can be read; write the values out',
};
export default rule;

export function reportYamlAliases(report: Report, file: string, fault: YamlFault): void {
  const message = say(
    'the aliases (*name) of this file unfold to more than can be read; write the values out',
  );
  report(rule, { file, place: fault.place, found: fault.text, message });
}
