import { say } from '../../model/say.ts';
import { withoutSpace } from '../meant-key.ts';
import { nearest } from '../nearest.ts';
import { pathInWords, type Refusal } from '../refusal.ts';
import type { Finding, Rule } from '../rule.ts';
import { homeOfKey, schemaAt } from '../schema-at.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-key',
  severity: 'error',
  acceptable: false,
  title: 'Unknown key',
  meaning:
    'A key that the file does not know would be passed over in silence, and what it says with it. A misspelt key is the commonest cause.',
  example: '"licens" is not a key of trial.yaml; did you mean "licence"?',
};
export default rule;

/** The keys that may stand at a path. */
export function keysAt(refusal: Refusal): string[] {
  return Object.keys(schemaAt(refusal.schema, refusal.path)?.properties ?? {});
}

/** True for a key of the file's top level that stands deeper, mostly because its line is indented. */
export function isOfTop(refusal: Refusal, key: string): boolean {
  return refusal.path.length > 0 && keysAt({ ...refusal, path: [] }).includes(key);
}

/** @param instead a needed key beside it that is missing, and may be this one */
export function explainUnknownKey(refusal: Refusal, instead: string | null = null): Finding {
  const key = String(refusal.error.params['additionalProperty']);
  const known = keysAt(refusal);
  const best = nearest(key, known);
  const home = best === null ? homeOfKey(refusal.schema, key) : null;
  const of = refusal.path.length === 0 ? refusal.file : pathInWords(refusal.path);
  const shown = { key: showText(key), of };
  const run = withoutSpace(key, known);
  const message =
    run !== null
      ? say('{key} is not a key of {of}; write a space after the colon: {name}: ...', { ...shown, name: run })
      : isRestOfNumber(refusal, key)
        ? say(
            '{key} is not a key of {of}; a comma within braces ends the value before it: write a number with a decimal point',
            shown,
          )
        : best !== null
          ? say('{key} is not a key of {of}; did you mean "{name}"?', { ...shown, name: best })
          : isOfTop(refusal, key)
            ? say(
                '{key} is not a key of {of}; it stands by itself: begin its line in the first column',
                shown,
              )
            : instead !== null
              ? say('{key} is not a key of {of}, and "{name}" is missing; is it this one?', {
                  ...shown,
                  name: instead,
                })
              : home !== null
                ? say('{key} is not a key of {of}; it belongs at {home}', { ...shown, home })
                : say('{key} is not a key of {of}; known keys: {names}', {
                    ...shown,
                    names: known.join(', '),
                  });
  return {
    file: refusal.file,
    place: refusal.yaml.keyPlace([...refusal.path, key]),
    found: key,
    expected: best ?? run ?? instead ?? home,
    message,
  };
}

/** True for digits without a value beside a number: what a decimal comma makes of `{length: 1,20}`. */
function isRestOfNumber({ error }: Refusal, key: string): boolean {
  if (!/^\d+$/.test(key) || typeof error.data !== 'object' || error.data === null) return false;
  const entries = Object.entries(error.data);
  return (
    entries.some(([other, value]) => other === key && value === null) &&
    entries.some(([, value]) => typeof value === 'number')
  );
}
