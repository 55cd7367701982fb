import type { Measure } from '../../compute/tables/measures.ts';
import type { NumberRead } from './number-typed.ts';

/** What a quantity is one of, in the unit that all findings of the kind are held in. */
export type Dimension = 'g' | 'kg/m2' | 'g/m2/day' | '%' | 'times';

/** How closely its author means it: as typed, about, as a bound, as an end of a range, or behind a plus-minus. */
export type Manner = 'exact' | 'about' | 'over' | 'under' | 'range' | 'spread';

/** A quantity that stands in a sentence as typed by hand. */
export interface TypedQuantity {
  /** Where it begins in the sentence, and where its unit ends. */
  index: number;
  end: number;
  /** As typed, with its unit. */
  text: string;
  /** Every way to read its number. */
  numbers: readonly NumberRead[];
  dimension: Dimension;
  /** How much one of the typed unit is in the unit of its dimension. */
  factor: number;
  /** The unit as typed, such as `oz`. */
  unit: string;
  /** What it is said to be of, where that is said beside it: `plant` is a plant set or harvested. */
  per: 'plant' | Exclude<Measure, 'per_plant_set' | 'per_plant_harvested'> | null;
  manner: Manner;
  /** For a percentage, whether it is said to be so much more or so much less; absent where neither is said. */
  direction?: 'more' | 'less';
}
