import { say } from '../../model/say.ts';
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
  const values = { key, path: pathInWords(refusal.path), example: line };
  return {
    file: refusal.file,
    place: isRoot ? null : refusal.yaml.keyPlace(refusal.path),
    expected: line,
    message: refusal.error.schemaPath.includes('/then/')
      ? missingWhenFinished(isRoot, values)
      : missing(isRoot, values),
  };
}

type Values = Readonly<Record<'key' | 'path' | 'example', string>>;

function missing(isRoot: boolean, values: Values): string {
  return isRoot
    ? say('the key "{key}" is missing; add it, such as {example}', values)
    : say('the key "{key}" of {path} is missing; add it, such as {example}', values);
}

function missingWhenFinished(isRoot: boolean, values: Values): string {
  return isRoot
    ? say('the key "{key}" is missing (a finished trial needs it); add it, such as {example}', values)
    : say(
        'the key "{key}" of {path} is missing (a finished trial needs it); add it, such as {example}',
        values,
      );
}
