import { flowYaml } from '../flow-yaml.ts';
import { formInWords } from '../pattern-words.ts';
import { pathInWords, type Refusal } from '../refusal.ts';
import type { Finding, Rule } from '../rule.ts';
import { schemaAt } from '../schema-at.ts';
import { showText, showValue } from '../show-value.ts';

const rule: Rule = {
  rule: 'wrong-form',
  severity: 'error',
  acceptable: false,
  title: 'Not in the form that is needed',
  meaning:
    'The value is of the right kind, but too long, too short, out of range or not written in the form that is needed.',
  example: 'version is "1.0", but must be three numbers with points between; write it like 1.1.0',
};
export default rule;

export function explainWrongForm(refusal: Refusal): Finding {
  const { data, propertyName: key } = refusal.error;
  const example = schemaAt(refusal.schema, refusal.path)?.examples?.[0];
  const expected = formInWords(refusal.error);
  const such = example === undefined ? '' : `; write it like ${flowYaml(example)}`;
  if (key !== undefined) {
    return {
      file: refusal.file,
      place: refusal.yaml.keyPlace([...refusal.path, key]),
      found: key,
      expected,
      message: `${pathInWords(refusal.path)} has the key ${showText(key)}, but a key of it must be ${expected}${such}`,
    };
  }
  return {
    file: refusal.file,
    place: refusal.yaml.place(refusal.path),
    found: showValue(data),
    expected,
    message: `${pathInWords(refusal.path)} is ${showValue(data)}, but must be ${expected}${such}`,
  };
}
