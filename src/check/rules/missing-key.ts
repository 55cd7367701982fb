import { flowYaml } from '../flow-yaml.ts';
import { pathInWords, type Refusal } from '../refusal.ts';
import type { Finding, Rule } from '../rule.ts';
import { schemaAt } from '../schema-at.ts';

const rule: Rule = {
  rule: 'missing-key',
  severity: 'error',
  acceptable: false,
  title: 'Missing key',
  meaning: 'Without this key a reader could not tell what was grown, where, how or by whom.',
  example: 'the key "licence" is missing; add it, such as licence: CC-BY-4.0',
};
export default rule;

export function explainMissingKey(refusal: Refusal): Finding {
  const key = String(refusal.error.params['missingProperty']);
  const example = schemaAt(refusal.schema, [...refusal.path, key])?.examples?.[0];
  const line = `${key}: ${flowYaml(example)}`;
  const isRoot = refusal.path.length === 0;
  const of = isRoot ? '' : ` of ${pathInWords(refusal.path)}`;
  const finished = refusal.error.schemaPath.includes('/then/') ? ' (a finished trial needs it)' : '';
  return {
    file: refusal.file,
    place: isRoot ? null : refusal.yaml.keyPlace(refusal.path),
    expected: line,
    message: `the key "${key}"${of} is missing${finished}; add it, such as ${line}`,
  };
}
