import { decimalSigns } from '../../compute/format/format-number.ts';
import { digitsOfValue } from '../../compute/format/digits-of-value.ts';
import { formatPercent } from '../../compute/format/format-percent.ts';
import type { Report } from '../../check/rule.ts';
import sheetTypedNumber from '../../check/rules/sheet-typed-number.ts';
import { showText } from '../../check/show-value.ts';
import { inLanguage, language } from '../../model/language.ts';
import { say } from '../../model/say.ts';
import type { Sentence } from '../prose/passage.ts';
import { bearsOut, nearestFact } from './borne-out.ts';
import type { ClaimWords } from './claim-words.ts';
import type { Fact } from './fact.ts';
import { factsFor, factsOfCut, factsOfNamed } from './facts-for.ts';
import { levelsInSentence, type NamedLevel } from './named-levels.ts';
import { isNotOfFindings } from './not-of-findings.ts';
import { quantityWords } from './quantity-words.ts';
import type { SheetClaims } from './sheet-claims.ts';
import type { TypedQuantity } from './typed-quantity.ts';
import { typedQuantities } from './typed-quantities.ts';

const noWords: Pick<ClaimWords, 'check' | 'levels'> = { check: [], levels: {} };

/** Reports every weight, yield and percentage of a sentence that was typed and that no finding rounds to. */
export function checkTypedNumbers(
  sentence: Sentence,
  sheet: SheetClaims,
  claims: ClaimWords | null,
  report: Report,
): void {
  const words = quantityWords(sheet.language);
  const quantities = typedQuantities(sentence, words);
  if (quantities.length === 0) return;
  const { cultivars } = sheet.library;
  const named = sheet.trials.flatMap(({ trial }) =>
    levelsInSentence(sentence, trial, cultivars, claims ?? noWords),
  );
  const trials = sheet.trials.map(({ trial }) => trial);
  for (const quantity of quantities) {
    if (isNotOfFindings(sentence, quantity, trials, words, named.length > 0)) continue;
    const spoken = factsFor(sheet.facts, quantity, sentence.text, words);
    const possible = factsOfCut(spoken, sentence.text, claims?.cuts ?? {}, words);
    const ofNamed = factsOfNamed(possible, named, sentence.text, words);
    if (ofNamed.some((fact) => bearsOut(fact, quantity))) continue;
    const elsewhere = possible.find((fact) => bearsOut(fact, quantity)) ?? null;
    const nearest = nearestFact(ofNamed, quantity);
    // The number is written as the sheet writes numbers, in whatever language the fault is told.
    const expected = nearest === null ? null : inUnit(nearest, quantity);
    report(sheetTypedNumber, {
      file: sheet.file,
      place: sentence.place(quantity.index),
      found: quantity.text,
      expected,
      message: inLanguage(sheet.told, () => message(quantity, nearest, expected, elsewhere, named)),
    });
  }
}

function message(
  quantity: TypedQuantity,
  nearest: Fact | null,
  number: string | null,
  elsewhere: Fact | null,
  named: readonly NamedLevel[],
): string {
  const typed = showText(quantity.text);
  if (nearest === null || number === null)
    return say(
      'no finding rounds to {typed}: the trial gives no number of the kind; take it out, or put words that are not the trial’s between <Quoted> and </Quoted>',
      { typed },
    );
  const values = { typed, number, words: nearest.words() };
  const { component } = nearest;
  if (elsewhere === null)
    return component === null
      ? say('no finding rounds to {typed}: the nearest is {number}, {words}; write that', values)
      : say('no finding rounds to {typed}: the nearest is {number}, {words}; write that, or {component}', {
          ...values,
          component,
        });
  const texts = [...new Set(named.map(({ text }) => text))];
  const names = texts
    .slice(1)
    .reduce((list, last) => say('{list} and {last}', { list, last }), texts[0] ?? '');
  const both = { ...values, elsewhere: elsewhere.words(), names };
  return component === null
    ? say(
        '{typed} is {elsewhere}, and the sentence names {names}: the nearest is {number}, {words}; write that',
        both,
      )
    : say(
        '{typed} is {elsewhere}, and the sentence names {names}: the nearest is {number}, {words}; write that, or {component}',
        { ...both, component },
      );
}

/** A fact in the unit that was typed, with a digit more than was typed where it has one. */
function inUnit({ value }: Fact, { factor, unit, numbers }: TypedQuantity): string {
  const digits = Math.min(4, digitsOfValue(Math.min(...numbers.map(({ step }) => step))) + 1);
  const text = (Math.abs(value) / factor).toFixed(digits).replace(/\.?0+$/, '');
  const decimals = text.split('.')[1]?.length ?? 0;
  if (unit.startsWith('%')) return formatPercent(Number(text), decimals);
  return `${text.replace('.', decimalSigns[language()])} ${unit}`;
}
