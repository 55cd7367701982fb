import { say } from '../../model/say.ts';
import { formatP } from '../../compute/format/format-p.ts';
import { formatRange } from '../../compute/format/format-range.ts';
import { amountOf } from '../../compute/words/telling.ts';
import { tell } from '../../compute/words/tell.ts';
import { askedDigits, askedMeasure, digitsAttribute, inferenceOf, perAttribute } from '../asked-measure.ts';
import { askedCut, askedLevels, cutAttribute, written } from '../asked-treatment.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { differenceBetween } from '../difference-between.ts';
import { wordsPiece } from '../piece.ts';
import { refuseForm, refuseNoValue } from '../refuse.ts';

export const difference: SheetComponent = {
  name: 'Difference',
  stands: 'in a sentence',
  holds: 'nothing',
  meaning:
    'How much more or less one treatment gave than another, with the 95% interval and the adjusted p; it says where the trial could not tell the two apart, and where it tested nothing. Put "than" and the other treatment behind it.',
  attributes: [
    { name: 'a', needed: true, meaning: 'The treatment that is spoken of, as factor=level.' },
    { name: 'b', needed: true, meaning: 'The treatment that it is set beside, as factor=level.' },
    perAttribute,
    cutAttribute,
    digitsAttribute,
    trialAttribute,
  ],
  example: ({ treatment, other, name, otherName }) =>
    other === treatment
      ? null
      : say('{name} gave {difference} than {other}.', {
          name,
          difference: `<Difference a="${treatment}" b="${other}" />`,
          other: otherName,
        }),
  resolve(asked) {
    const found = askedFindings(asked);
    if (found === null) return null;
    const { trial, findings } = found;
    const given = askedCut(asked, findings);
    const a = askedLevels(asked, 'a', found);
    const b = askedLevels(asked, 'b', found);
    if (given === null || a === null || b === null) return null;
    if (written(a) === written(b))
      return refuseForm(asked, 'b', say('a and b name the same treatment; name two'));
    const measure = askedMeasure(asked, trial);
    const inference = inferenceOf(findings, measure, given.cut);
    const between = differenceBetween(given.descriptions, measure, inference, a, b);
    if (between.estimate === null)
      return refuseNoValue(
        asked,
        'a',
        say('this difference is not known: {reason}', { reason: between.reason }),
      );
    const { unit } = findings.variable;
    const digits = askedDigits(asked, trial, findings, measure);
    const size = amountOf(Math.abs(between.estimate), unit, digits);
    const words =
      between.estimate >= 0
        ? tell('{amount} more', { amount: size })
        : tell('{amount} less', { amount: size });
    const path = `trials/${trial.id}/#said`;
    if (between.tested === null) return wordsPiece(words, path, tell(' (not tested)'));
    const { lower, upper, p, alpha } = between.tested;
    const [near, far] = between.estimate >= 0 ? [lower, upper] : [-upper, -lower];
    const values = { range: formatRange(near, far, unit, digits), p: formatP(p, alpha) };
    const behind =
      p < alpha
        ? tell(' (95% interval {range}, adjusted {p})', values)
        : tell(' (not told apart: 95% interval {range}, adjusted {p})', values);
    return wordsPiece(words, path, behind);
  },
};
