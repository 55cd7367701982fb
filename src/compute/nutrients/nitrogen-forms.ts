import { say } from '../../model/say.ts';
import type { Nutrient } from '../../model/nutrient-keys.ts';
import { type Amount, known, unknown } from './recipe.ts';

type Forms = Record<'N' | 'NO3_N' | 'NH4_N' | 'urea_N', Amount>;

/** Labels round to a tenth, so a rest below this many percent of the salt's weight is rounding. */
const rounding = 0.15;

/**
 * The forms of nitrogen that a label tells, in percent of the salt's weight (or a water's analysis, in mg/L).
 *
 * - N alone: how much of it is nitrate, ammonium or urea is unknown, unless it is 0.
 * - N and some forms: where the forms make up N to rounding, the forms not named are 0. A rest beside nitrate and
 *   ammonium is urea (or slow-release nitrogen, uncharged like it). Any other rest leaves the forms not named unknown.
 * - Forms without N: a label that splits nitrogen names every form it holds, so N is their sum and the others are 0.
 *
 * @param label what the label gives, by nutrient; at least one of the four
 */
export function nitrogenForms(
  label: ReadonlyMap<Nutrient, number>,
  name: string,
): Forms & { remark: string } {
  const forms = ['NO3_N', 'NH4_N', 'urea_N'] as const;
  const named = forms.filter((form) => label.has(form));
  const total = named.reduce((sum, form) => sum + label.get(form)!, 0);
  const nitrogen = label.get('N') ?? total;
  const rest = nitrogen - total;
  const settled = Math.abs(rest) <= rounding;
  const restIsUrea = label.has('NO3_N') && label.has('NH4_N');
  const shareOf = (form: (typeof forms)[number]): Amount => {
    if (label.has(form)) return known(label.get(form)!);
    if (settled || nitrogen === 0) return known(0);
    if (restIsUrea && rest > 0) return known(rest);
    return unknown(
      say('{salt}: nothing says how much of the nitrogen is nitrate and how much ammonium', { salt: name }),
    );
  };
  const over = rest < -rounding;
  return {
    N: known(nitrogen),
    NO3_N: shareOf('NO3_N'),
    NH4_N: shareOf('NH4_N'),
    urea_N: shareOf('urea_N'),
    remark: over
      ? say('{salt}: nitrate, ammonium and urea add up to more than the nitrogen.', { salt: name })
      : '',
  };
}
