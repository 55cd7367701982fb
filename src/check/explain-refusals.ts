import type { Path, Yaml } from '../read/yaml.ts';
import { pathOf } from './json-pointer.ts';
import { meantKey } from './meant-key.ts';
import type { Refusal } from './refusal.ts';
import type { Report } from './rule.ts';
import missingKey, { explainMissingKey } from './rules/missing-key.ts';
import unknownKey, { explainUnknownKey, isOfTop, keysAt } from './rules/unknown-key.ts';
import wrongChoice, { explainWrongChoice } from './rules/wrong-choice.ts';
import wrongDate, { explainWrongDate } from './rules/wrong-date.ts';
import wrongForm, { explainWrongForm } from './rules/wrong-form.ts';
import wrongType, { explainWrongType } from './rules/wrong-type.ts';
import { validate, type SchemaName } from './validator.ts';

/** Reports, in growers' words, all that a schema refuses in a value. */
export function explainRefusals(
  schema: SchemaName,
  value: unknown,
  file: string,
  yaml: Pick<Yaml, 'place' | 'keyPlace'>,
  report: Report,
): void {
  const refusals = validate(schema, value)
    .filter(({ keyword }) => keyword !== 'if')
    .map((error): Refusal => ({ error, schema, file, path: pathOf(error.instancePath), yaml }));
  const misspelt = misspeltKeys(refusals);
  const instead = strangeInsteadOf(refusals, misspelt);
  const said = new Set<string>();
  for (const refusal of refusals) {
    const { keyword, params } = refusal.error;
    const at = pointerOf(refusal.path);
    if (keyword === 'required') {
      const missing = String(params['missingProperty']);
      if (misspelt.has(`${at}/${missing}`) || instead.get(at) === missing) continue;
      report(missingKey, explainMissingKey(refusal));
    } else if (keyword === 'additionalProperties')
      report(unknownKey, explainUnknownKey(refusal, instead.get(at) ?? null));
    else {
      // One value, one message: the first is the one that the others follow from.
      if (said.has(at)) continue;
      said.add(at);
      explainValue(refusal, report);
    }
  }
}

function explainValue(refusal: Refusal, report: Report): void {
  const { keyword, params } = refusal.error;
  if (keyword === 'type') report(wrongType, explainWrongType(refusal));
  else if (keyword === 'enum' || keyword === 'const') report(wrongChoice, explainWrongChoice(refusal));
  else if (keyword === 'format' && params['format'] === 'date') report(wrongDate, explainWrongDate(refusal));
  else report(wrongForm, explainWrongForm(refusal));
}

const pointerOf = (path: Path): string => path.join('/');

/** By the path of a mapping: its one needed key that is missing, where just one of its keys is unknown and means nothing. */
function strangeInsteadOf(refusals: readonly Refusal[], misspelt: ReadonlySet<string>): Map<string, string> {
  const instead = new Map<string, string>();
  for (const [at, group] of Map.groupBy(refusals, ({ path }) => pointerOf(path))) {
    const missing = group
      .filter(({ error }) => error.keyword === 'required')
      .map(({ error }) => String(error.params['missingProperty']))
      .filter((key) => !misspelt.has(`${at}/${key}`));
    const strange = group.filter((refusal) => {
      const key = String(refusal.error.params['additionalProperty']);
      return (
        refusal.error.keyword === 'additionalProperties' &&
        meantKey(key, keysAt(refusal)) === null &&
        !isOfTop(refusal, key)
      );
    });
    if (at !== '' && missing.length === 1 && strange.length === 1) instead.set(at, missing[0]!);
  }
  return instead;
}

/** The needed keys that an unknown key beside them, or deeper, was probably meant to be. */
function misspeltKeys(refusals: readonly Refusal[]): Set<string> {
  const meant = refusals
    .filter(({ error }) => error.keyword === 'additionalProperties')
    .map((refusal) => {
      const key = String(refusal.error.params['additionalProperty']);
      const best = meantKey(key, keysAt(refusal));
      if (best === null && isOfTop(refusal, key)) return `/${key}`;
      return `${pointerOf(refusal.path)}/${best ?? ''}`;
    });
  return new Set(meant);
}
