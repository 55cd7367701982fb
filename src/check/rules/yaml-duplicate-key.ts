import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { YamlFault } from '../../read/yaml.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'yaml-duplicate-key',
  severity: 'error',
  acceptable: false,
  title: 'The same key twice',
  meaning: 'Of two keys of one name only one could count, and which would be chance.',
  example: 'the key of "title: Second title" stands twice; keep one',
};
export default rule;

export function reportYamlDuplicateKey(report: Report, file: string, fault: YamlFault): void {
  const line = showText((fault.text ?? '').trim());
  report(rule, {
    file,
    place: fault.place,
    found: fault.text,
    message: say('the key at {line} stands twice in the same mapping; keep one of the two', { line }),
  });
}
