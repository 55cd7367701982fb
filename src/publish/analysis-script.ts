import { finestUnit } from '../compute/experimental-unit.ts';
import { type Yields, yieldsOf } from '../compute/yields.ts';
import type { TrialWithFindings } from '../model/library.ts';
import type { Inference } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { conclusionsPart } from './analysis-script/conclusions-part.ts';
import { descriptionPart } from './analysis-script/description-part.ts';
import {
  arrangementsCounted,
  entriesPart,
  planned,
  type PlannedEntry,
} from './analysis-script/entries-part.ts';
import { linearModelPart } from './analysis-script/linear-model-part.ts';
import { positionPart } from './analysis-script/position-part.ts';
import { rComment, rNamed, rString } from './analysis-script/r-text.ts';
import { weightsPart } from './analysis-script/weights-part.ts';
import { licence } from './licence.ts';

/**
 * `analysis.R`: a script in plain base R (base, stats and datasets, R 4 or newer) that reads weights.csv beside
 * it and computes the published figures anew, sharing no code with what computed them. It prints them and
 * leaves them in the list `results`. Empty where the trial is not finished.
 */
export function analysisScript({ trial, findings }: TrialWithFindings): string {
  if (findings === null) return '';
  const yields = new Map<Inference['cut'], Yields>();
  const yieldsOfCut = (cut: Inference['cut']): Yields => {
    const known = yields.get(cut) ?? yieldsOf(trial, cut);
    yields.set(cut, known);
    return known;
  };
  const entries = planned(trial, findings.inference, yieldsOfCut);
  const square = trial.metadata.design.arrangement === 'latin square' ? finestUnit(trial) : null;
  const parts = [
    header(trial),
    weightsPart(trial, square === 'container' ? null : square),
    descriptionPart(trial),
    modelParts(trial, entries),
    entriesPart(entries),
    positionPart(trial, findings.position),
  ];
  return `${parts
    .filter((part) => part !== '')
    .join('\n')
    .replace(/[ \t]+\n/g, '\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim()}\n`;
}

function modelParts(trial: Trial, entries: readonly PlannedEntry[]): string {
  const plans = entries.flatMap(({ plan }) => (plan === null ? [] : [plan]));
  if (plans.length === 0) return entries.length === 0 ? '' : notTestedAlone;
  const some = (test: (each: PlannedEntry) => boolean) => entries.some(test);
  const checks = (trial.metadata.factors ?? []).flatMap(({ id, check }): [string, string][] =>
    check === undefined ? [] : [[id, rString(check)]],
  );
  return [
    linearModelPart(new Set(plans.map(({ kind }) => kind))),
    conclusionsPart(
      {
        check: some(({ entry }) => entry.against_check.length > 0),
        ranks: some(({ entry }) => entry.rank_test !== undefined && entry.rank_test !== null),
        arrangements: some(({ entry, plan }) => plan !== null && arrangementsCounted(entry, plan)),
        otherScale: some(({ entry }) => entry.transformed !== undefined && entry.transformed !== null),
      },
      some(({ entry }) => entry.against_check.length > 0) ? rNamed(checks, 'list') : 'list()',
    ),
  ].join('\n');
}

/** Where no entry is tested, there is no model either. */
const notTestedAlone = String.raw`
not_tested <- function(measure, cut, reason) {
  cat("\n==", measure, ", cut:", cut, "==\nnot tested\n")
  writeLines(strwrap(reason, 90))
  list(measure = measure, cut = cut, verdict = "not tested", reason = reason)
}
`;

function header(trial: Trial): string {
  const { metadata } = trial;
  const terms = licence(metadata.licence);
  return [
    rComment(`${metadata.title} (${trial.id}), version ${metadata.version}`),
    rComment(`Licence: ${terms.name} (${terms.id})`),
    '#',
    rComment(
      'This script computes the published figures of the trial (findings.json) again from weights.csv, so that nobody need take them on trust. Run it in the folder that holds weights.csv:',
    ),
    '#     Rscript analysis.R',
    rComment(
      'It needs R 4 or newer and no packages: read.csv, lm, aov with Error(), drop1, nlminb, integrate, ptukey, shapiro.test and the like are all part of R.',
    ),
    '#',
    rComment('At the end everything stands in the list "results":'),
    '#   counts       plants by what became of them',
    '#   treatments   for each cut and "all", a table of descriptions, one row a treatment',
    '#   inference    for each measure and cut (such as "per_pot, all") a list: verdict, anova, means,',
    '#                differences, against_check and so on, named as in findings.json',
    "#   position     for each container: slopes along rows and columns, edge, interior, halves, Moran's I",
    rComment(
      'Weights are in g, areas in m2. NA stands where a number cannot be had; findings.json says why.',
    ),
    '',
    'results <- list()',
  ].join('\n');
}
