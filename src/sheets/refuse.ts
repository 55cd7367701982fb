import { didYouMean } from '../check/nearest.ts';
import type { Rule } from '../check/rule.ts';
import sheetMissingAttribute from '../check/rules/sheet-missing-attribute.ts';
import sheetNoValue from '../check/rules/sheet-no-value.ts';
import sheetUnknownName from '../check/rules/sheet-unknown-name.ts';
import sheetWrongAttribute from '../check/rules/sheet-wrong-attribute.ts';
import { say } from '../model/say.ts';
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
 * @param fault begins the sentence, such as "the trial has no factor", and ends with the name in quotes
 */
export function refuseName(
  asked: Asked,
  attribute: string,
  fault: string,
  name: string,
  known: readonly string[],
): null {
  const meant = didYouMean(name, known);
  const names = known.slice(0, listedNames).join(', ') + (known.length > listedNames ? ', ...' : '');
  const help = meant !== '' ? meant : known.length === 0 ? '' : say('; there is {names}', { names });
  return refuse(sheetUnknownName, asked, attribute, fault + help);
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
