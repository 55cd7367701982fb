import type { Measure } from '../../compute/tables/measures.ts';
import type { Treatment } from '../../model/trial.ts';
import type { Dimension } from './typed-quantity.ts';

/** What sort of number a fact is, which decides the sentences that may give it. */
export type FactKind =
  | 'mean'
  | 'difference'
  | 'extreme'
  | 'total'
  | 'share'
  | 'single'
  | 'spread'
  | 'limits'
  | 'quartiles'
  | 'place'
  | 'planning';

/** A number that a trial bears out. */
export interface Fact {
  /** In the unit of its dimension. */
  value: number;
  dimension: Dimension;
  kind: FactKind;
  /** In words, such as "the mean per pot of Slate Egret", in the language of the time when they are asked for. */
  words: () => string;
  /** The treatments that it is of; empty where it is of none in particular. */
  treatments: readonly Treatment[];
  /** The cut that it is of; absent where it is of all cuts, or of none. */
  cut?: number;
  /** For a difference in percent, whether what is set against the other gave more than it or less. */
  direction?: 'more' | 'less';
  /** What it is reckoned by; null where that does not matter to it. */
  measure: Measure | null;
  /** The component that prints it; null where there is none for it. */
  component: string | null;
}
