import { say } from '../../model/say.ts';
import type { SheetFault } from '../../read/sheet-fault.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'sheet-wrong-attribute',
  severity: 'error',
  acceptable: false,
  title: 'Attribute with a value that it cannot have',
  meaning:
    'An attribute has one of a few values, or a value of a certain form. Another would have to be guessed at.',
  example:
    'per of Value cannot be "pots"; did you mean "pot"? It is one of plant_set, plant_harvested, pot, container',
};
export default rule;

/** Reports an attribute without a value, or given twice. */
export function reportSheetAttribute(
  report: Report,
  file: string,
  { kind, place, found, detail }: SheetFault,
): void {
  const values = { attribute: found, component: detail };
  const message =
    kind === 'bare attribute'
      ? say(
          '{attribute} of {component} has no value; write it in double quotes, such as {attribute}="..."',
          values,
        )
      : say('{attribute} of {component} stands twice; keep one', values);
  report(rule, { file, place, found, message });
}
