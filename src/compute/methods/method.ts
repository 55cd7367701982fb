import type { Seasons } from '../../model/generated/seasons.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import type { LevelNames } from '../format/level-names.ts';

/** A finished trial as a method's example is taken from it. */
export interface ExampleTrial {
  trial: Trial;
  findings: Findings;
  names: LevelNames;
}

/** A worked example: what it is of, then each step with its numbers put in. */
export interface Example {
  of: string;
  steps: readonly { name: string; formula: string }[];
}

/** An example that takes several trials: of a crop's comparison. */
export interface AcrossExample extends Example {
  species: string;
}

/** How a number of the site is computed. */
export interface Method {
  /** The anchor on the page of methods. */
  id: string;
  name: string;
  /** What it answers, and when it is used. */
  use: string;
  /** The formula, a line each; words and signs, no mark-up. */
  formula: readonly string[];
  /** What readers should know before they rely on it. */
  remarks?: readonly string[];
  references: readonly string[];
  /** The example of a trial, null where the trial has none. */
  example: (of: ExampleTrial) => Example | null;
  /** The example across trials, for a method that takes several. */
  across?: (entries: readonly Seasons[], name: (cultivar: string) => string) => AcrossExample | null;
}

/** Methods that belong together. */
export interface MethodGroup {
  id: string;
  name: string;
  methods: readonly Method[];
}
