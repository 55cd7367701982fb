import { type LevelNames, levelNames } from '../compute/format/level-names.ts';
import type { Trial } from '../model/trial.ts';

/** What a figure may be told beside the trial and its findings. */
export interface FigureOptions {
  /** Names of the levels; without it those of the trial alone. */
  names?: LevelNames;
}

/** The options with their defaults. */
export function withDefaults(trial: Trial, options: FigureOptions): Required<FigureOptions> {
  return { names: options.names ?? levelNames(trial) };
}
