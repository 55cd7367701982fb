import type { TrialMetadata } from '../../model/trial.ts';

/** A recipe as trial.yaml's `nutrients` gives it: salts, source water and the stock's ratio. */
export type Recipe = NonNullable<TrialMetadata['nutrients']>;

/** One salt of a recipe, weighed into a litre of the finished solution. */
export type Salt = NonNullable<Recipe['salts']>[number];

/**
 * A number, or what is known of it: `value` is null where a part is not known, `atLeast` the sum of the known
 * parts, and `reason` says in a grower's words what is missing.
 */
export interface Amount {
  value: number | null;
  atLeast: number;
  reason: string;
}

/** A number that is known. */
export function known(value: number): Amount {
  return { value, atLeast: value, reason: '' };
}

/** A number that is not known, and why. */
export function unknown(reason: string): Amount {
  return { value: null, atLeast: 0, reason };
}

/** What a warning is about. */
export type WarningKind =
  | 'label'
  | 'name'
  | 'formula'
  | 'settles'
  | 'beyond solubility'
  | 'near solubility'
  | 'charges'
  | 'measured EC';

/** Something in a recipe to look out for. */
export interface Warning {
  kind: WarningKind;
  /** In a grower's words, a whole sentence. */
  text: string;
  /** Place of the salt in the recipe, from 0; null where it is about the recipe or the water. */
  salt: number | null;
}
