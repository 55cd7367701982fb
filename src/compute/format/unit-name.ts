const printed: Readonly<Record<string, string>> = {
  'kg/m2': 'kg/m²',
  'g/m2/day': 'g/m² a day',
  m2: 'm²',
  Cel: '°C',
  '1': '',
  '{score}': '',
  '{count}': '',
  '%': '%',
};

/**
 * A unit as a reader sees it: `m2` becomes m², `Cel` °C; the dimensionless codes become nothing, others stay
 * as they are.
 */
export function unitName(unit: string): string {
  if (Object.hasOwn(printed, unit)) return printed[unit]!;
  return /^\{.*\}$/.test(unit) ? unit.slice(1, -1) : unit;
}
