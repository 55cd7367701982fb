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

const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a mapping of keys to values',
};

export function explainWrongType(refusal: Refusal): Finding {
  const { data } = refusal.error;
  const type = String(refusal.error.params['type']);
  const name = refusal.path.length === 0 ? 'the file' : pathInWords(refusal.path);
  const schema = schemaAt(refusal.schema, refusal.path);
  const example = schema?.examples?.[0];
  const isDay = schema?.format === 'date';
  const expected = isDay ? 'a date' : (kinds[type] ?? type);
  const such = example === undefined ? '' : `, such as ${flowYaml(example)}`;
  const isEmpty = data === null || data === undefined;
  const is = isEmpty ? 'is empty' : `is ${showValue(data)}`;
  return {
    file: refusal.file,
    place: isEmpty ? refusal.yaml.keyPlace(refusal.path) : refusal.yaml.place(refusal.path),
    found: isEmpty ? null : showValue(data),
    expected,
    message: `${name} ${is}, but must be ${expected}${advice(type, data, schema) ?? such}`,
  };
}

/** What to write instead, where that can be told from what was found. */
function advice(type: string, data: unknown, schema: ReturnType<typeof schemaAt>): string | null {
  const pattern = schema?.pattern;
  if (schema?.format === 'date' && typeof data === 'number')
    return isDayNumber(String(data)) ? "; this is a spreadsheet's day number: write year-month-day" : null;
  // In quotes it would still not have the form that is needed, such as version: 1.0.
  if (pattern !== undefined && !new RegExp(pattern, 'u').test(String(data))) return null;
  if (type === 'string' && (typeof data === 'number' || typeof data === 'boolean')) {
    return `; write it in quotes: "${String(data)}"`;
  }
  if (type === 'boolean' && typeof data === 'string' && /^(y|yes|on|j|ja|si|oui)$/i.test(data))
    return '; write true';
  if (type === 'boolean' && typeof data === 'string' && /^(n|no|off|nein|non)$/i.test(data))
    return '; write false';
  if ((type === 'number' || type === 'integer') && typeof data === 'string' && /\d/.test(data)) {
    if (/^\d+(\.\d+)?$/.test(data)) return `; write it without quotes: ${data}`;
    const { expected } = explainNumber(data.trim(), '.');
    return expected === null ? null : `; write ${expected}`;
  }
  if (type === 'array' && typeof data !== 'object' && data !== undefined)
    return `; write [${flowYaml(data)}]`;
  return null;
}
