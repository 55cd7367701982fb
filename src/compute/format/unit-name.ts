import { say } from '../../model/say.ts';
const printed: Readonly<Record<string, string>> = {
  'kg/m2': 'kg/m²',
  m2: 'm²',
  Cel: '°C',
  '1': '',
  '{score}': '',
  '{count}': '',
  '%': '%',
};

const customary: Readonly<Record<string, string>> = {
  acr: 'acre',
  bu: 'bu',
  ft: 'ft',
  sft: 'ft²',
  gal: 'US gal',
  in: 'in',
  lb: 'lb',
  oz: 'oz',
  yd: 'yd',
};

/**
 * A unit as a reader sees it: `m2` becomes m², `Cel` °C; the dimensionless codes become nothing, others stay
 * as they are.
 */
export function unitName(unit: string): string {
  if (unit === 'g/m2/day') return say('g/m² a day');
  if (Object.hasOwn(printed, unit)) return printed[unit]!;
  if (/^\{.*\}$/.test(unit)) return unit.slice(1, -1);
  // UCUM writes customary units in brackets, with the country or system behind: [acr_us] is an acre.
  return unit.replace(
    /\[([a-z]+)(?:_[a-z]+)?\]/gi,
    (whole, atom: string) => customary[atom.toLowerCase()] ?? whole,
  );
}
