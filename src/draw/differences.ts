import { digitsOfDifference } from '../compute/format/digits-of-difference.ts';
import { formatP } from '../compute/format/format-p.ts';
import { formatQuantity } from '../compute/format/format-quantity.ts';
import { formatRange } from '../compute/format/format-range.ts';
import { treatmentName } from '../compute/format/level-names.ts';
import { printedResolution } from '../compute/format/printed-resolution.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings, Inference } from '../model/findings.ts';
import type { Treatment, Trial } from '../model/trial.ts';
import { listed } from '../compute/words/words.ts';
import { say } from '../model/say.ts';
import { differenceFigure, mostDifferences } from './difference-figure.ts';
import { figureId } from './figure-id.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import type { IntervalRow } from './interval-rows.ts';

const measures: Readonly<Record<Inference['measure'], string>> = {
  per_pot: 'weight per pot',
  per_plant_set: 'weight per plant set',
  per_plant_harvested: 'weight per plant harvested',
};

/** What an analysis was of, in words: the measure, and the cut where it was of one cut. */
export function analysed(inference: Inference): string {
  const measure = say(measures[inference.measure]);
  return inference.cut === 'all' ? measure : say('{measure}, cut {cut}', { measure, cut: inference.cut });
}

/** Decimals of a difference of means, with as many readings in each as the thinnest treatment has. */
export function digitsOfDifferences(trial: Trial, findings: Findings, inference: Inference): number {
  const counts = findings.treatments.flatMap((each) => each[inference.measure]?.n ?? []).filter((n) => n > 0);
  const n = counts.length === 0 ? 1 : Math.min(...counts);
  return digitsOfDifference(printedResolution(trial.metadata.variables[0]), n, n);
}

/**
 * The differences between treatments with their simultaneous 95% intervals and a line at zero, one section
 * for each family of comparisons. Null where the design allowed no test or there are no differences.
 */
export function drawDifferences(
  trial: Trial,
  findings: Findings,
  inference: Inference,
  options: FigureOptions = {},
): Figure | null {
  if (inference.verdict !== 'tested') return null;
  const { names } = withDefaults(trial, options);
  const { unit } = findings.variable;
  const digits = digitsOfDifferences(trial, findings, inference);
  const familyOf = (treatment: Treatment) => Object.keys(treatment).sort().join(' ');
  const known = inference.differences.filter(({ lower, upper }) => lower !== null && upper !== null);
  const families = new Set(known.map(({ a }) => familyOf(a)));
  const kept = new Set(
    [...known].sort((a, b) => Math.abs(b.estimate!) - Math.abs(a.estimate!)).slice(0, mostDifferences),
  );
  let family = '';
  const rows = known
    .filter((difference) => kept.has(difference))
    .map((difference): IntervalRow => {
      const { a, b, estimate, lower, upper, p_adjusted: p } = difference;
      const begins = familyOf(a) !== family && families.size > 1;
      family = familyOf(a);
      return {
        name: `${treatmentName(trial, a, names)} − ${treatmentName(trial, b, names)}`,
        centre: estimate!,
        lower: lower!,
        upper: upper!,
        estimate: formatQuantity(estimate!, unit, digits, { plus: true }),
        limits: formatRange(lower!, upper!, unit, digits, { plus: true }),
        aside: p === null ? '' : formatP(p, inference.alpha),
        section: begins ? say('Between levels of {factors}', { factors: factorNames(trial, a) }) : null,
      };
    });
  if (rows.length === 0) return null;
  const id = figureId('differences', inference.measure, inference.cut);
  const title =
    rows.length < known.length
      ? say('The {drawn} largest of {all} differences in {analysed}, with 95% intervals', {
          drawn: rows.length,
          all: known.length,
          analysed: analysed(inference),
        })
      : say('Differences in {analysed}, with 95% intervals', { analysed: analysed(inference) });
  return differenceFigure({ id, title, kind: 'differences' }, rows, unit, digits);
}

function factorNames(trial: Trial, treatment: Treatment): string {
  const words = (trial.metadata.factors ?? [])
    .filter(({ id }) => Object.hasOwn(treatment, id))
    .map(({ name }) => name);
  return listed(words).toLowerCase();
}
