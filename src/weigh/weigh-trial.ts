import type { Metadata } from '../check/facts.ts';
import type { TrialMetadata, Variable } from '../model/trial.ts';
import type { WeighTrial } from '../model/weigh-trial.ts';

/** The metadata as the check's functions take them. */
export function checkedMetadata(metadata: TrialMetadata): Metadata {
  const nowhere = () => ({ line: 1, column: 1 });
  return { draft: metadata, lost: new Set(), place: nowhere, keyPlace: nowhere };
}

/** The primary variable. Throws where there is none, which the schema forbids. */
export function primaryOf({ metadata }: WeighTrial): Variable {
  const [primary] = metadata.variables;
  if (primary === undefined) throw new Error('a trial has at least one variable');
  return primary;
}
