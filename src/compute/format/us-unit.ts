import { say } from '../../model/say.ts';
import { gramsIn, litresIn, metresIn, squareMetresInSquareFoot } from '../../model/units.ts';

/** A US customary unit beside a metric one: value in US units = metric value * factor + offset. */
export interface UsUnit {
  /** As printed. */
  unit: string;
  factor: number;
  /** 0 but for temperature. */
  offset: number;
}

const ounces = 1 / gramsIn['oz']!;
const poundsInKilogram = 1000 / gramsIn['lb']!;
const gallons = 1 / litresIn['gal']!;

const usUnits: Readonly<Record<string, UsUnit>> = {
  g: { unit: 'oz', factor: ounces, offset: 0 },
  kg: { unit: 'lb', factor: poundsInKilogram, offset: 0 },
  'kg/m2': { unit: 'lb/ft²', factor: poundsInKilogram * squareMetresInSquareFoot, offset: 0 },
  'g/m2/day': {
    get unit() {
      return say('oz/ft² a day');
    },
    factor: ounces * squareMetresInSquareFoot,
    offset: 0,
  },
  cm: { unit: 'in', factor: 0.01 / metresIn['in']!, offset: 0 },
  m: { unit: 'ft', factor: 1 / metresIn['ft']!, offset: 0 },
  m2: { unit: 'ft²', factor: 1 / squareMetresInSquareFoot, offset: 0 },
  L: { unit: 'US gal', factor: gallons, offset: 0 },
  'L/kg': { unit: 'US gal/lb', factor: gallons / poundsInKilogram, offset: 0 },
  Cel: { unit: '°F', factor: 1.8, offset: 32 },
};

/**
 * The US customary unit that is printed beside a metric one, by exact factors; null where the trade uses
 * the metric unit in both (mS/cm, mg/L) or the unit is not known.
 *
 * @param metric g, kg, kg/m2, g/m2/day, cm, m, m2, L, L/kg or Cel
 * @example usUnit('g')?.unit // "oz"
 */
export function usUnit(metric: string): UsUnit | null {
  return Object.hasOwn(usUnits, metric) ? usUnits[metric]! : null;
}

/**
 * Digits after the decimal point in the US unit for a number printed with the given digits in the metric
 * one: the power of ten nearest to the metric place, so that neither says more than the other. 1 g (0.035
 * oz) gives 0.1 oz.
 */
export function usDigits(us: UsUnit, metricDigits: number): number {
  return -Math.round(Math.log10(us.factor) - metricDigits) + 0;
}
