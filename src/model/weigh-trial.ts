import type { Position, TrialMetadata } from './trial.ts';

/** A trial as far as weighing needs it: what trial.yaml says, and what was planted where. */
export interface WeighTrial {
  id: string;
  metadata: TrialMetadata;
  positions: readonly Position[];
}
