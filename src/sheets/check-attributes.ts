import { didYouMean, nearest } from '../check/nearest.ts';
import type { Report } from '../check/rule.ts';
import sheetMissingAttribute from '../check/rules/sheet-missing-attribute.ts';
import sheetUnknownAttribute from '../check/rules/sheet-unknown-attribute.ts';
import sheetWrongAttribute from '../check/rules/sheet-wrong-attribute.ts';
import { showText } from '../check/show-value.ts';
import type { BlockComponent, InlineComponent, SheetAttribute } from '../model/fact-sheet.ts';
import { say } from '../model/say.ts';
import type { ComponentAttribute, SheetComponent } from './component.ts';

/** True where a component's attributes are ones that it has, with values that they can have; else it is reported. */
export function checkAttributes(
  component: InlineComponent | BlockComponent,
  spec: SheetComponent,
  file: string,
  report: Report,
): boolean {
  const { name, attributes } = component;
  const known = spec.attributes.map((each) => each.name);
  let sound = true;
  for (const attribute of attributes) {
    const about = spec.attributes.find((each) => each.name === attribute.name);
    const fault =
      about === undefined ? unknown(attribute.name, name, known) : faultOf(attribute, about, name);
    if (fault === null) continue;
    sound = false;
    const rule = about === undefined ? sheetUnknownAttribute : sheetWrongAttribute;
    const found = about === undefined ? attribute.name : attribute.value;
    report(rule, { file, place: attribute, found, message: fault });
  }
  for (const about of spec.attributes) {
    if (about.needed !== true || attributes.some((each) => each.name === about.name)) continue;
    // A misspelt attribute is reported as such, and is not missing as well.
    const misspelt = attributes.some(
      (each) => !known.includes(each.name) && didYouMean(each.name, [about.name]) !== '',
    );
    sound = false;
    if (misspelt) continue;
    const needed = { component: name, attribute: about.name };
    const message =
      about.choices === undefined
        ? say('{component} needs the attribute {attribute}', needed)
        : say('{component} needs the attribute {attribute}, one of {choices}', {
            ...needed,
            choices: about.choices.join(', '),
          });
    report(sheetMissingAttribute, { file, place: component, found: name, message });
  }
  return sound;
}

function unknown(attribute: string, component: string, known: readonly string[]): string {
  const meant = didYouMean(attribute, known);
  const values = { component, attribute: showText(attribute) };
  if (meant !== '') return say('{component} has no attribute {attribute}', values) + meant;
  return known.length === 0
    ? say('{component} has no attribute {attribute}; it has none', values)
    : say('{component} has no attribute {attribute}; it has {known}', { ...values, known: known.join(', ') });
}

function faultOf(
  { name, value }: SheetAttribute,
  { choices, form }: ComponentAttribute,
  component: string,
): string | null {
  const values = { attribute: name, component, value: showText(value) };
  if (choices !== undefined && !choices.includes(value)) {
    const near = nearest(value, choices);
    const all = { ...values, choices: choices.join(', ') };
    if (choices.length === 1)
      return say('{attribute} of {component} cannot be {value}; it can only be {choices}', all);
    return near === null
      ? say('{attribute} of {component} cannot be {value}; it is one of {choices}', all)
      : say('{attribute} of {component} cannot be {value}; did you mean "{near}"? It is one of {choices}', {
          ...all,
          near,
        });
  }
  if (form !== undefined && !form.pattern.test(value)) {
    return say('{attribute} of {component} cannot be {value}; write {form}', {
      ...values,
      form: say(form.words),
    });
  }
  return value.trim() === ''
    ? say('{attribute} of {component} is empty; write a value or leave it out', values)
    : null;
}
