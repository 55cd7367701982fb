import { didYouMean } from '../check/nearest.ts';
import type { Report } from '../check/rule.ts';
import sheetMissingAttribute from '../check/rules/sheet-missing-attribute.ts';
import sheetUnknownAttribute from '../check/rules/sheet-unknown-attribute.ts';
import sheetWrongAttribute from '../check/rules/sheet-wrong-attribute.ts';
import { showText } from '../check/show-value.ts';
import type { BlockComponent, InlineComponent, SheetAttribute } from '../model/fact-sheet.ts';
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
    const some = about.choices === undefined ? '' : `, one of ${about.choices.join(', ')}`;
    report(sheetMissingAttribute, {
      file,
      place: component,
      found: name,
      message: `${name} needs the attribute ${about.name}${some}`,
    });
  }
  return sound;
}

function unknown(attribute: string, component: string, known: readonly string[]): string {
  const meant = didYouMean(attribute, known);
  const help = meant !== '' ? meant : known.length === 0 ? '; it has none' : `; it has ${known.join(', ')}`;
  return `${component} has no attribute ${showText(attribute)}${help}`;
}

function faultOf(
  { name, value }: SheetAttribute,
  { choices, form }: ComponentAttribute,
  component: string,
): string | null {
  if (choices !== undefined && !choices.includes(value)) {
    const meant = didYouMean(value, choices);
    const help =
      meant !== '' && choices.length > 1
        ? `${meant} It is one of`
        : choices.length > 1
          ? '; it is one of'
          : '; it can only be';
    return `${name} of ${component} cannot be ${showText(value)}${help} ${choices.join(', ')}`;
  }
  if (form !== undefined && !form.pattern.test(value)) {
    return `${name} of ${component} cannot be ${showText(value)}; write ${form.words}`;
  }
  return value.trim() === '' ? `${name} of ${component} is empty; write a value or leave it out` : null;
}
