import { say } from '../../model/say.ts';
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
  const such = example === undefined ? '' : say('; write it like {example}', { example: flowYaml(example) });
  const name = pathInWords(refusal.path);
  if (key !== undefined) {
    const message = say('{name} has the key {key}, but a key of it must be {expected}', {
      name,
      key: showText(key),
      expected,
    });
    return {
      file: refusal.file,
      place: refusal.yaml.keyPlace([...refusal.path, key]),
      found: key,
      expected,
      message: `${message}${such}`,
    };
  }
  const message = say('{name} is {found}, but must be {expected}', {
    name,
    found: showValue(data),
    expected,
  });
  return {
    file: refusal.file,
    place: refusal.yaml.place(refusal.path),
    found: showValue(data),
    expected,
    message: `${message}${such}`,
  };
}
