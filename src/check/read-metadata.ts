import { say } from '../model/say.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { isReserved } from './harvest-columns.ts';
import { explainRefusals } from './explain-refusals.ts';
import type { Metadata } from './facts.ts';
import { nearest } from './nearest.ts';
import type { Report } from './rule.ts';
import { reportNotAMapping } from './rules/not-a-mapping.ts';
import { roots } from './schema-at.ts';
import { soundPart } from './sound-part.ts';
import { yamlOf } from './yaml-file.ts';

const file = 'trial.yaml';

/** True for a mapping: neither a list nor a scalar. */
export function isMapping(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Keys of which two entries have the same id, or one that is a column's, so that a row cannot be told which of them it means. */
function clashing(draft: Partial<TrialMetadata>): string[] {
  return (['containers', 'factors', 'variables'] as const).filter((key) => {
    const ids = (draft[key] ?? []).map(({ id }) => id);
    return new Set(ids).size < ids.length || (key !== 'containers' && ids.some(isReserved));
  });
}

/** Keys of the top level that an unknown key was probably meant to be, so that they only seem to be absent. */
function misspelt(value: Record<string, unknown>): string[] {
  const known = Object.keys(roots.trial.properties ?? {});
  const unknown = Object.keys(value).filter((key) => !known.includes(key));
  return unknown.map((key) => nearest(key, known)).filter((key) => key !== null);
}

/** Reads trial.yaml; null where it is no YAML mapping, which is then reported. */
export function readMetadata(bytes: Uint8Array, report: Report): Metadata | null {
  const yaml = yamlOf(file, bytes, report);
  if (yaml === null) return null;
  if (!isMapping(yaml.value)) {
    const wanted = say('keys and values, such as title: Three autumn lettuces');
    reportNotAMapping(report, file, yaml.value, wanted);
    return null;
  }
  explainRefusals('trial', yaml.value, file, yaml, report);
  const { value, lost, original } = soundPart('trial', yaml.value);
  const draft = value as Partial<TrialMetadata>;
  return {
    // The schema refuses nothing in it any more, save that keys of the top level may be absent.
    draft,
    lost: new Set([
      ...lost,
      ...clashing(draft),
      ...misspelt(yaml.value).filter((key) => !Object.hasOwn(draft, key)),
    ]),
    place: (path) => yaml.place(original(path)),
    keyPlace: (path) => yaml.keyPlace(original(path)),
  };
}
