import type { TrialMetadata } from '../model/trial.ts';
import { explainRefusals } from './explain-refusals.ts';
import type { Metadata } from './facts.ts';
import type { Report } from './rule.ts';
import { reportNotAMapping } from './rules/not-a-mapping.ts';
import { soundPart } from './sound-part.ts';
import { yamlOf } from './yaml-file.ts';

const file = 'trial.yaml';

/** True for a mapping: neither a list nor a scalar. */
export function isMapping(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Reads trial.yaml; null where it is no YAML mapping, which is then reported. */
export function readMetadata(bytes: Uint8Array, report: Report): Metadata | null {
  const yaml = yamlOf(file, bytes, report);
  if (yaml === null) return null;
  if (!isMapping(yaml.value)) {
    reportNotAMapping(report, file, yaml.value, 'keys and values, such as title: Three autumn lettuces');
    return null;
  }
  explainRefusals('trial', yaml.value, file, yaml, report);
  const { value, lost, original } = soundPart('trial', yaml.value);
  return {
    // The schema refuses nothing in it any more, save that keys of the top level may be absent.
    draft: value as Partial<TrialMetadata>,
    lost,
    place: (path) => yaml.place(original(path)),
    keyPlace: (path) => yaml.keyPlace(original(path)),
  };
}
