import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatQuantity } from '../format/format-quantity.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { bareP } from '../tables/inference/bare-p.ts';
import { termName } from '../tables/inference/names-of.ts';
import { measureName } from '../tables/measures.ts';
import { noNumber, type Text } from '../tables/page-table.ts';
import { digitsFor } from '../tables/treatment-summary.ts';
import { headlineOf } from '../words/headline.ts';

/** A version of a trial with what was found in it. */
export interface TrialVersion {
  trial: Trial;
  findings: Findings;
  names: LevelNames;
}

/** A published figure that two versions give otherwise, as each of them prints it. */
export interface MovedFigure {
  figure: string;
  before: Text;
  after: Text;
}

/**
 * The figures of a trial's finding that moved between two versions: each treatment's mean by the headline measure, its
 * letters and its yield by area, and each term's F and p. A figure that is printed alike has not moved.
 */
export function movedFigures(before: TrialVersion, after: TrialVersion): MovedFigure[] {
  const old = figuresOf(before);
  const present = figuresOf(after);
  const all = new Set([...present.keys(), ...old.keys()]);
  return [...all].flatMap((figure) => {
    const [was, is] = [old.get(figure) ?? noNumber, present.get(figure) ?? noNumber];
    return JSON.stringify(was) === JSON.stringify(is) ? [] : [{ figure, before: was, after: is }];
  });
}

function figuresOf({ trial, findings, names }: TrialVersion): Map<string, Text> {
  const figures = new Map<string, Text>();
  const { inference, measure, summaryOf } = headlineOf(trial, findings);
  const summaries = findings.treatments.map(summaryOf);
  const digits = digitsFor(
    trial,
    summaries.filter((summary) => summary !== null),
  );
  for (const [index, { treatment, kg_per_m2: perArea }] of findings.treatments.entries()) {
    const name = treatmentName(trial, treatment, names);
    const mean = summaries[index]?.mean ?? null;
    if (mean !== null) {
      const figure = say('{name}: mean {measure}', { name, measure: measureName(measure) });
      figures.set(figure, formatQuantity(mean, findings.variable.unit, digits));
    }
    if (perArea !== null) figures.set(`${name}: ${say('yield')}`, formatQuantity(perArea, 'kg/m2', 2));
  }
  if (inference === null) return figures;
  for (const { treatment, letters } of inference.means) {
    if (letters !== null)
      figures.set(`${treatmentName(trial, treatment, names)}: ${say('letters')}`, letters);
  }
  for (const { term, f, p } of inference.anova) {
    if (f !== null) figures.set(`${termName(trial, term)}: F`, formatNumber(f, 2));
    if (p !== null) figures.set(`${termName(trial, term)}: p`, bareP(p, inference.alpha));
  }
  figures.set(say('Verdict'), say(inference.verdict));
  return figures;
}
