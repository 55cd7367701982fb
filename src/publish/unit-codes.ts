/** How the standards name a unit. */
export interface UnitCodes {
  /** The Unified Code for Units of Measure. */
  ucum: string;
  /** UN/CEFACT Recommendation 20, null where none is known here. */
  unece: string | null;
  /** QUDT's address of the unit, null where none is known here. */
  qudt: string | null;
}

const qudt = (name: string): string => `http://qudt.org/vocab/unit/${name}`;

/** UCUM 2.2 with UN/CEFACT Rec 20 codes; QUDT unit vocabulary. */
const known: Record<string, UnitCodes> = {
  g: { ucum: 'g', unece: 'GRM', qudt: qudt('GM') },
  kg: { ucum: 'kg', unece: 'KGM', qudt: qudt('KiloGM') },
  '[oz_av]': { ucum: '[oz_av]', unece: 'ONZ', qudt: qudt('OZ') },
  '[lb_av]': { ucum: '[lb_av]', unece: 'LBR', qudt: qudt('LB') },
  'kg/m2': { ucum: 'kg/m2', unece: '28', qudt: qudt('KiloGM-PER-M2') },
  'g/m2': { ucum: 'g/m2', unece: 'GM', qudt: qudt('GM-PER-M2') },
  'g/L': { ucum: 'g/L', unece: 'GL', qudt: qudt('GM-PER-L') },
  'mS/cm': { ucum: 'mS/cm', unece: 'H61', qudt: qudt('MilliS-PER-CentiM') },
  'mg/L': { ucum: 'mg/L', unece: 'M1', qudt: qudt('MilliGM-PER-L') },
  Cel: { ucum: 'Cel', unece: 'CEL', qudt: qudt('DEG_C') },
  d: { ucum: 'd', unece: 'DAY', qudt: qudt('DAY') },
};

/** The codes of a unit given as a UCUM code; null for a plain number (`1`). */
export function unitCodes(unit: string): UnitCodes | null {
  if (unit === '1') return null;
  return known[unit] ?? { ucum: unit, unece: null, qudt: null };
}

/** The UCUM code of a unit as trial.yaml writes it, where oz and lb are allowed too. */
export function ucumUnit(unit: string): string {
  return unit === 'oz' || unit === 'lb' ? `[${unit}_av]` : unit;
}
