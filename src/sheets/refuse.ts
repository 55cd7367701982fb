import { didYouMean } from '../check/nearest.ts';
import type { Rule } from '../check/rule.ts';
import sheetMissingAttribute from '../check/rules/sheet-missing-attribute.ts';
import sheetNoValue from '../check/rules/sheet-no-value.ts';
import sheetUnknownName from '../check/rules/sheet-unknown-name.ts';
import sheetWrongAttribute from '../check/rules/sheet-wrong-attribute.ts';
import { showText } from '../check/show-value.ts';
import type { Asked } from './component.ts';

function refuse(rule: Rule, asked: Asked, attribute: string, message: string): null {
  asked.report(rule, {
    file: asked.sheet.file,
    place: asked.place(attribute),
    found: asked.attribute(attribute) ?? asked.component.name,
    message,
  });
  return null;
}

/** So many names are listed where none of them is near. */
const listedNames = 8;

/**
 * Reports a name that there is not, with the nearest one or, where none is near, those that there are.
 *
 * @param what begins the sentence, such as "the trial has no factor"
 */
export function refuseName(
  asked: Asked,
  attribute: string,
  what: string,
  name: string,
  known: readonly string[],
): null {
  const meant = didYouMean(name, known);
  const some = known.slice(0, listedNames).join(', ') + (known.length > listedNames ? ', ...' : '');
  const help = meant !== '' ? meant : known.length === 0 ? '' : `; there is ${some}`;
  return refuse(sheetUnknownName, asked, attribute, `${what} ${showText(name)}${help}`);
}

/** Reports a number, figure or table that the trial does not give, with the reason. */
export function refuseNoValue(asked: Asked, attribute: string, message: string): null {
  return refuse(sheetNoValue, asked, attribute, message);
}

export function refuseMissing(asked: Asked, attribute: string, message: string): null {
  return refuse(sheetMissingAttribute, asked, attribute, message);
}

export function refuseForm(asked: Asked, attribute: string, message: string): null {
  return refuse(sheetWrongAttribute, asked, attribute, message);
}
