import type { ChoosableCrop } from '../../compare/choice/address-of-choice.ts';

/** A measure of a crop as the page offers it. */
export interface PageMeasure {
  /** As an address has it. */
  measure: string;
  /** "per plant set". */
  words: string;
  /** The address of its file. */
  file: string;
}

/** A crop as the page offers it: what is written into the page for its script. */
export interface PageCrop {
  id: string;
  name: string;
  species: string;
  measures: readonly PageMeasure[];
}

/** The crops as an address is read and written by. */
export function choosable(crops: readonly PageCrop[]): ChoosableCrop[] {
  return crops.map(({ id, measures }) => ({ id, measures: measures.map(({ measure }) => measure) }));
}
