import { type Measure, measureName } from '../../compute/tables/measures.ts';
import { say } from '../../model/say.ts';
import type { Fact } from './fact.ts';

export type Cut = number | 'all';

/** What a number is reckoned by, and of which treatment. */
interface Told {
  measure: Measure;
  cut: Cut;
}

/** "the mean per pot of Slate Egret at cut 2", from "the mean". */
export function ofOne(what: string, { measure, cut }: Told, treatment: string): string {
  const values = { what, measure: measureName(measure), treatment };
  return cut === 'all'
    ? say('{what} {measure} of {treatment}', values)
    : say('{what} {measure} of {treatment} at cut {cut}', { ...values, cut });
}

/** "the difference per pot between Slate Egret and Cobalt Wren at cut 2", from "the difference". */
export function ofTwo(what: string, { measure, cut }: Told, a: string, b: string): string {
  const values = { what, measure: measureName(measure), a, b };
  return cut === 'all'
    ? say('{what} {measure} between {a} and {b}', values)
    : say('{what} {measure} between {a} and {b} at cut {cut}', { ...values, cut });
}

/** "the least significant difference per pot at cut 2", from its name. */
export function ofAll(what: string, { measure, cut }: Told): string {
  const values = { what, measure: measureName(measure) };
  return cut === 'all'
    ? say('{what} {measure}', values)
    : say('{what} {measure} at cut {cut}', { ...values, cut });
}

/** "the yield by area of Slate Egret at cut 2", from "the yield by area". */
export function ofTreatment(what: string, treatment: string, cut: Cut): string {
  return cut === 'all'
    ? say('{what} of {treatment}', { what, treatment })
    : say('{what} of {treatment} at cut {cut}', { what, treatment, cut });
}

/** As a component names the cut. */
export const cutAttribute = (cut: Cut): string => (cut === 'all' ? '' : ` cut="${String(cut)}"`);
/** As a component names a measure. */
export const per: Readonly<Record<Measure, string>> = {
  per_plant_set: 'plant_set',
  per_plant_harvested: 'plant_harvested',
  per_pot: 'pot',
  per_container: 'container',
};

/** A fact, where its number is known. */
export function number(value: number | null, fact: Omit<Fact, 'value'>): Fact[] {
  return value === null ? [] : [{ ...fact, value }];
}
