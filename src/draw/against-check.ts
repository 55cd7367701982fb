import { formatP } from '../compute/format/format-p.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { formatQuantity } from '../compute/format/format-quantity.ts';
import { formatRange } from '../compute/format/format-range.ts';
import { treatmentName } from '../compute/format/level-names.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings, Inference } from '../model/findings.ts';
import type { Treatment, Trial } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { differenceFigure } from './difference-figure.ts';
import { analysed, digitsOfDifferences } from './differences.ts';
import { figureId } from './figure-id.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import type { IntervalRow } from './interval-rows.ts';

/**
 * Every level against the check (the check cultivar, or the control) with Dunnett's simultaneous 95%
 * intervals. Null where the design allowed no test or the trial has no check.
 */
export function drawAgainstCheck(
  trial: Trial,
  findings: Findings,
  inference: Inference,
  options: FigureOptions = {},
): Figure | null {
  if (inference.verdict !== 'tested') return null;
  const { names } = withDefaults(trial, options);
  const { unit } = findings.variable;
  const digits = digitsOfDifferences(trial, findings, inference);
  const rows = inference.against_check
    .filter(({ estimate, lower, upper }) => estimate !== null && lower !== null && upper !== null)
    .map(({ treatment, estimate, lower, upper, p_adjusted: p, percent_of_check: percent }): IntervalRow => {
      const words = [
        percent === null ? '' : say('{percent} of the check', { percent: formatPercent(percent, 0) }),
        p === null ? '' : formatP(p, inference.alpha),
      ];
      return {
        name: rowName(trial, treatment, names),
        centre: estimate!,
        lower: lower!,
        upper: upper!,
        estimate: formatQuantity(estimate!, unit, digits, { plus: true }),
        limits: formatRange(lower!, upper!, unit, digits, { plus: true }),
        aside: words.filter((each) => each !== '').join(', '),
        section: null,
      };
    });
  if (rows.length === 0) return null;
  const check = checkName(trial, names);
  const id = figureId('against-check', inference.measure, inference.cut);
  const title = say('Each treatment less the check{check}: {analysed}, with 95% intervals', {
    check,
    analysed: analysed(inference),
  });
  return differenceFigure({ id, title, kind: 'against-check' }, rows, unit, digits);
}

type Names = (factor: string, level: string) => string;

const withCheck = (trial: Trial) => (trial.metadata.factors ?? []).filter(({ check }) => check !== undefined);

/** Where several factors have a check, each row says which of them it is held against. */
function rowName(trial: Trial, treatment: Treatment, names: Names): string {
  const name = treatmentName(trial, treatment, names);
  const checks = withCheck(trial);
  const own = checks.find(({ id }) => Object.hasOwn(treatment, id));
  if (checks.length < 2 || own === undefined) return name;
  return `${name} − ${treatmentName(trial, { [own.id]: own.check! }, names)}`;
}

function checkName(trial: Trial, names: Names): string {
  const checks = withCheck(trial);
  return checks.length === 1 ? ` ${names(checks[0]!.id, checks[0]!.check!)}` : '';
}
