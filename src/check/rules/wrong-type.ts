import { say } from '../../model/say.ts';
import { isDayNumber } from '../date.ts';
import { explainNumber } from '../explain-number.ts';
import { flowYaml } from '../flow-yaml.ts';
import { pathInWords, type Refusal } from '../refusal.ts';
import type { Finding, Rule } from '../rule.ts';
import { schemaAt } from '../schema-at.ts';
import { showValue } from '../show-value.ts';

const rule: Rule = {
  rule: 'wrong-type',
  severity: 'error',
  acceptable: false,
  title: 'Wrong kind of value',
  meaning: 'A text stands where a number is needed, one value where a list is needed, and the like.',
  example: 'containers[1].rows is "three", but must be a whole number, such as 3',
};
export default rule;

const kinds: Readonly<Record<string, () => string>> = {
  string: () => say('text'),
  number: () => say('a number'),
  integer: () => say('a whole number'),
  // The two words are YAML's and stay as they are.
  boolean: () => say('{one} or {other}', { one: 'true', other: 'false' }),
  array: () => say('a list'),
  object: () => say('a mapping of keys to values'),
};

export function explainWrongType(refusal: Refusal): Finding {
  const { data } = refusal.error;
  const type = String(refusal.error.params['type']);
  const name = refusal.path.length === 0 ? say('the file') : pathInWords(refusal.path);
  const schema = schemaAt(refusal.schema, refusal.path);
  const example = schema?.examples?.[0];
  const isDay = schema?.format === 'date';
  const expected = isDay ? say('a date') : (kinds[type]?.() ?? type);
  const such = example === undefined ? '' : say(', such as {example}', { example: flowYaml(example) });
  const isEmpty = data === null || data === undefined;
  const message = isEmpty
    ? say('{name} is empty, but must be {expected}', { name, expected })
    : say('{name} is {found}, but must be {expected}', { name, found: showValue(data), expected });
  return {
    file: refusal.file,
    place: isEmpty ? refusal.yaml.keyPlace(refusal.path) : refusal.yaml.place(refusal.path),
    found: isEmpty ? null : showValue(data),
    expected,
    message: `${message}${advice(type, data, schema) ?? such}`,
  };
}

/** What to write instead, where that can be told from what was found. */
function advice(type: string, data: unknown, schema: ReturnType<typeof schemaAt>): string | null {
  const pattern = schema?.pattern;
  if (schema?.format === 'date' && typeof data === 'number')
    return isDayNumber(String(data))
      ? say("; this is a spreadsheet's day number: write year-month-day")
      : null;
  // In quotes it would still not have the form that is needed, such as version: 1.0.
  if (pattern !== undefined && !new RegExp(pattern, 'u').test(String(data))) return null;
  if (type === 'string' && (typeof data === 'number' || typeof data === 'boolean')) {
    return say('; write it in quotes: {value}', { value: `"${String(data)}"` });
  }
  if (type === 'boolean' && typeof data === 'string' && /^(y|yes|on|j|ja|si|oui)$/i.test(data))
    return say('; write {value}', { value: 'true' });
  if (type === 'boolean' && typeof data === 'string' && /^(n|no|off|nein|non)$/i.test(data))
    return say('; write {value}', { value: 'false' });
  if ((type === 'number' || type === 'integer') && typeof data === 'string' && /\d/.test(data)) {
    if (/^\d+(\.\d+)?$/.test(data)) return say('; write it without quotes: {value}', { value: data });
    const { expected } = explainNumber(data.trim(), '.');
    return expected === null ? null : say('; write {value}', { value: expected });
  }
  if (type === 'array' && typeof data !== 'object' && data !== undefined)
    return say('; write {value}', { value: `[${flowYaml(data)}]` });
  return null;
}
