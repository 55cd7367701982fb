import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { isWeight } from '../../model/units.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unit-of-a-variable',
  severity: 'error',
  acceptable: false,
  title: 'Unit in words',
  meaning: 'Units are written as UCUM codes (g, kg, cm, mL, %), or oz or lb, so that programs read them too.',
  example: 'the unit "grams" is written g',
  check,
};
export default rule;

/** What growers write for a unit, and its code. */
const codes: Readonly<Record<string, string | undefined>> = {
  gramm: 'g',
  gramms: 'g',
  grms: 'g',
  gr: 'g',
  gm: 'g',
  gms: 'g',
  grm: 'g',
  gram: 'g',
  grams: 'g',
  gramme: 'g',
  grammes: 'g',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  ounce: 'oz',
  ounces: 'oz',
  ozs: 'oz',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  '#': 'lb',
  milligram: 'mg',
  milligrams: 'mg',
  inch: '[in_i]',
  inches: '[in_i]',
  in: '[in_i]',
  feet: '[ft_i]',
  foot: '[ft_i]',
  ft: '[ft_i]',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  percent: '%',
  'per cent': '%',
  celsius: 'Cel',
  '°c': 'Cel',
  day: 'd',
  days: 'd',
};

const weightUnits = new Set(['g', 'kg', 'mg', 'oz', 'lb', '[oz_av]', '[lb_av]']);

/** The code of a unit written in words or with blanks around it; null for any other text. */
export function codeOfWord(unit: string): string | null {
  const plain = unit.trim().toLowerCase();
  const code = codes[plain] ?? (weightUnits.has(plain) ? plain : null);
  return code ?? (unit === unit.trim() ? null : unit.trim());
}

function check({ metadata }: Facts, report: Report): void {
  for (const [index, { unit, lowest, highest, id }] of (metadata.draft.variables ?? []).entries()) {
    const code = unit === undefined || isWeight(unit) ? null : codeOfWord(unit);
    if (unit !== undefined && code !== null) {
      const message = say('the unit {unit} is written {code}', { unit: showText(unit), code });
      const place = metadata.place(['variables', index, 'unit']);
      report(rule, { file: 'trial.yaml', place, found: unit, expected: code, message });
    }
    if (lowest !== undefined && highest !== undefined && lowest > highest) {
      const message = say(
        'lowest ({lowest}) of {variable} is above its highest ({highest}); exchange the two',
        { lowest, variable: id, highest },
      );
      report(rule, {
        file: 'trial.yaml',
        place: metadata.place(['variables', index, 'lowest']),
        found: String(lowest),
        message,
      });
    }
  }
}
