import { say } from '../../model/say.ts';
import { isWeight } from '../../model/units.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import { isUcum } from '../ucum.ts';
import { codeOfWord } from './unit-of-a-variable.ts';

const rule: Rule = {
  rule: 'unknown-unit',
  severity: 'warning',
  acceptable: true,
  title: 'Unknown unit',
  meaning:
    'The unit is none of the UCUM codes known here, nor oz or lb. It is published as it stands, but a weight in it is not converted to g.',
  example: 'the unit "gramms" of fresh_weight is no UCUM code; write one, such as g',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  for (const [index, { id, unit }] of (metadata.draft.variables ?? []).entries()) {
    if (unit === undefined || isWeight(unit) || isUcum(unit) || codeOfWord(unit) !== null) continue;
    // What stands in braces at its end is a unit, and stays as it is.
    const message = say(
      'the unit {unit} of {variable} is no UCUM code that is known here; write one, such as g, cm, mL or {leaves}',
      { unit: showText(unit), variable: id },
    );
    const place = metadata.place(['variables', index, 'unit']);
    report(rule, { file: 'trial.yaml', place, found: unit, message });
  }
}
