import type { Measure } from '../tables/measures.ts';

/** One value that went into a number. */
export interface WorkingValue {
  /** Container, row, column and, where a pot held several, the plant. */
  place: string;
  /** As printed, without its unit. */
  value: string;
  /** The rows of weights.csv that it comes from, its heading being row 1. */
  rows: readonly number[];
}

/** How the numbers of one treatment and measure came about. */
export interface MeasureWorking {
  /** The anchor that the numbers lead to. */
  id: string;
  measure: Measure;
  heading: string;
  values: readonly WorkingValue[];
  /** What was left out, and why. */
  leftOut: readonly { place: string; reason: string; rows: readonly number[] }[];
  /** Each number with its formula and the numbers put in. */
  steps: readonly { name: string; formula: string }[];
}

/** How the numbers of one treatment came about. */
export interface TreatmentWorking {
  treatment: string;
  measures: readonly MeasureWorking[];
  /** Yield by area and by day; null where there is none. */
  area: { id: string; heading: string; steps: readonly { name: string; formula: string }[] } | null;
}

/**
 * The anchor of a working.
 *
 * @param place the treatment's place in the table, from 0
 */
export function workingId(cut: number | 'all', place: number, what: Measure | 'area'): string {
  const ofCut = cut === 'all' ? '' : `cut-${cut}-`;
  return `working-${ofCut}${place + 1}-${what.replaceAll('_', '-')}`;
}
