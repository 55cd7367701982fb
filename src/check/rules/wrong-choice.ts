import { say } from '../../model/say.ts';
import { flowYaml } from '../flow-yaml.ts';
import { didYouMean } from '../nearest.ts';
import { pathInWords, type Refusal } from '../refusal.ts';
import type { Finding, Rule } from '../rule.ts';
import { showValue } from '../show-value.ts';

const rule: Rule = {
  rule: 'wrong-choice',
  severity: 'error',
  acceptable: false,
  title: 'Not one of the choices',
  meaning: 'Some values are words from a fixed list, so that trials can be compared.',
  example: 'status is "done", but must be one of: planned, growing, finished',
};
export default rule;

export function explainWrongChoice(refusal: Refusal): Finding {
  const { data, params } = refusal.error;
  const allowed: unknown = params['allowedValues'] ?? [params['allowedValue']];
  const choices = (Array.isArray(allowed) ? allowed : [allowed]).map(String);
  const guess = typeof data === 'string' ? didYouMean(data, choices) : '';
  const expected = choices.map(flowYaml).join(', ');
  const isEmpty = data === null;
  const name = pathInWords(refusal.path);
  const must = choices.length === 1 ? expected : say('one of: {names}', { names: expected });
  const message = isEmpty
    ? say('{name} is empty, but must be {expected}', { name, expected: must })
    : say('{name} is {found}, but must be {expected}', { name, found: showValue(data), expected: must });
  return {
    file: refusal.file,
    place: isEmpty ? refusal.yaml.keyPlace(refusal.path) : refusal.yaml.place(refusal.path),
    found: showValue(data),
    expected,
    message: `${message}${guess}`,
  };
}
