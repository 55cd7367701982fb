import { type AnalysisPlan, analysisPlan } from '../../compute/inference/analysis-plan.ts';
import { confoundedStrata } from '../../compute/inference/confounded-strata.ts';
import type { Yields } from '../../compute/yields.ts';
import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { rComment, rHeading, rName, rNumber, rString, rStrings } from './r-text.ts';
import { columnOfUnit } from './weights-part.ts';

/** An entry of the findings with how it is analysed; no plan where it is not tested. */
export interface PlannedEntry {
  entry: Inference;
  plan: AnalysisPlan | null;
}

/** How each entry is analysed. */
export function planned(
  trial: Trial,
  entries: readonly Inference[],
  yieldsOfCut: (cut: Inference['cut']) => Yields,
): PlannedEntry[] {
  return entries.map((entry) => ({
    entry,
    plan: entry.verdict === 'tested' ? analysisPlan(trial, entry, yieldsOfCut(entry.cut)) : null,
  }));
}

/** Every entry of the findings, analysed again. */
export function entriesPart(entries: readonly PlannedEntry[]): string {
  if (entries.length === 0) return '';
  return [
    rHeading('5. The analyses, one for each measure and cut'),
    'results$inference <- list()',
    ...entries.map(({ entry, plan }) => (plan === null ? notTested(entry) : tested(entry, plan))),
  ].join('\n');
}

const nameOf = ({ measure, cut }: Inference) => rString(`${measure}, ${cut}`);
const arguments_ = ({ measure, cut }: Inference) => `${rString(measure)}, ${rString(String(cut))}`;

function notTested(entry: Inference): string {
  return `results$inference[[${nameOf(entry)}]] <- not_tested(${arguments_(entry)}, ${rString(entry.reason)})\n`;
}

function tested(entry: Inference, plan: AnalysisPlan): string {
  const name = nameOf(entry);
  const { transformed } = entry;
  return [
    rComment(`${entry.model}.`),
    entry.reason === '' ? '' : rComment(entry.reason),
    `d <- observations(${arguments_(entry)})`,
    `design <- ${designOf(entry, plan)}`,
    ...(byRanksAlone(entry) ? rankedResult(entry, plan) : fitLines(entry, plan)),
    rankLines(entry, plan),
    transformed ? otherScaleLines(entry, plan, transformed.scale) : '',
    `show_result(result)`,
    `results$inference[[${name}]] <- result\n`,
  ]
    .filter((line) => line !== '')
    .join('\n');
}

/** Scores have no sums of squares in the findings: medians and a test on ranks alone. */
function byRanksAlone(entry: Inference): boolean {
  return entry.anova.length === 0;
}

/** A result with nothing in it yet; units are told from a fit, whose sums of squares are not used. */
function rankedResult(entry: Inference, plan: AnalysisPlan): string[] {
  const [measure, cut] = [rString(entry.measure), rString(String(entry.cut))];
  return [
    ...fitLines(entry, plan).filter((line) => !line.startsWith('result <-')),
    `result <- list(measure = ${measure}, cut = ${cut}, verdict = "tested")`,
  ];
}

function listOfTerms(terms: readonly (readonly string[])[]): string {
  return `list(${terms.map((factors) => rStrings(factors)).join(', ')})`;
}

function stratumOf({ design }: AnalysisPlan, unit: AnalysisPlan['design']['finest']): string {
  return design.errors.nameOf.get(unit) ?? design.errors.residual;
}

/** Errors with their columns; under likelihood only those that have degrees of freedom. */
function errorsOf({ kind, design, degrees }: AnalysisPlan): { names: string[]; columns: string[] } {
  const strata = design.errors.strata.filter(
    ({ name }) => kind === 'strata' || (kind === 'likelihood' && degrees.get(name)! > 0),
  );
  const columns = strata.map(({ name }) => columnOfUnit(name as AnalysisPlan['design']['finest']));
  return { names: [...strata.map(({ name }) => name), design.errors.residual], columns };
}

function designOf(entry: Inference, plan: AnalysisPlan): string {
  const { design, degrees } = plan;
  const all = design.errors.strata.map(({ name }) => name);
  const isTested = (term: string) => {
    const row = entry.anova.find((each) => each.term === term);
    return row?.f !== null && row?.f !== undefined;
  };
  // A factor may have no F, not all of its combinations having been grown, and yet levels to compare.
  const isCompared = (factors: readonly string[]) =>
    entry.differences.some(
      ({ a }) => Object.keys(a).length === factors.length && factors.every((factor) => factor in a),
    );
  return [
    'list(',
    `  blocks = ${listOfTerms(design.blocks)},`,
    `  terms = ${listOfTerms(design.terms.map(({ factors }) => factors))},`,
    `  tested = c(${design.terms.map(({ name }) => (isTested(name) ? 'TRUE' : 'FALSE')).join(', ')}),`,
    `  compared = c(${design.terms.map(({ factors }) => (isCompared(factors) ? 'TRUE' : 'FALSE')).join(', ')}),`,
    `  greatest = c(${design.terms.map(({ unit }) => rNumber(degrees.get(stratumOf(plan, unit))!)).join(', ')}),`,
    `  strata = ${rStrings([...all, design.errors.residual])},`,
    `  columns = ${rStrings(all.map((name) => columnOfUnit(name as typeof design.finest)))},`,
    `  unit = ${rString(columnOfUnit(design.finest))}, unit_stratum = ${rString(stratumOf(plan, design.finest))})`,
  ].join('\n');
}

function fitLines(entry: Inference, plan: AnalysisPlan, into = 'result'): string[] {
  const { kind, design } = plan;
  const { names, columns } = errorsOf(plan);
  const fixed = [...design.blocks, ...design.terms.map(({ factors }) => factors)];
  const formula = `.value ~ ${fixed.map((factors) => factors.map(rName).join(':')).join(' + ')}`;
  const concluded = (anova: string, components: string) =>
    `${into} <- conclude(${arguments_(entry)}, d, fit, ${anova}, ${components}, design)`;
  if (kind === 'strata') {
    const error = columns.length === 0 ? '' : ` + Error(${columns.map(rName).join(' + ')})`;
    const call = `aov(${formula}${error}, d)`;
    return [
      columns.length < 2
        ? `model <- ${call}`
        : `# aov warns that finer units lie within coarser ones, as they are meant to.\nmodel <- suppressWarnings(${call})`,
      'table <- strata_table(model, d, sapply(design$blocks, paste, collapse = ":"), design$strata, design$columns)',
      'fit <- fit_by_strata(c(design$blocks, design$terms), d, table)',
      'components <- strata_components(table, design$strata, design$columns, d)',
      concluded('table', 'components'),
    ];
  }
  if (kind === 'least squares') {
    const residual = rString(design.errors.residual);
    const against = [
      ...design.blocks.map(() => design.errors.residual),
      ...design.terms.map(({ unit }) => stratumOf(plan, unit)),
      design.errors.residual,
    ];
    return [
      'fit <- fit_by_least_squares(c(design$blocks, design$terms), d)',
      ...confoundedLines(design),
      concluded(
        `type_three(${formula}, d, ${rStrings(against)})`,
        `data.frame(term = ${residual}, variance = fit$variance)`,
      ),
    ];
  }
  const errors = [
    ...design.blocks.map(() => names[0]!),
    ...design.terms.map(({ unit }) => stratumOf(plan, unit)),
  ];
  const greatest = design.blocks.length === 0 ? '' : `rep(Inf, ${design.blocks.length}), `;
  return [
    `fit <- fit_by_likelihood(c(design$blocks, design$terms), d, ${rStrings(columns)}, ${rStrings(names)})`,
    ...confoundedLines(design),
    `anova <- likelihood_table(fit, ${rStrings(errors)}, c(${greatest}design$greatest))`,
    concluded('anova', 'fit$components'),
  ];
}

/** Marks what groups that coincide with treatments leave without an error. */
function confoundedLines(design: AnalysisPlan['design']): string[] {
  const columns = confoundedStrata(design).map(({ name }) =>
    columnOfUnit(name as AnalysisPlan['design']['finest']),
  );
  return columns.length === 0 ? [] : [`fit <- with_confounded_groups(fit, d, ${rStrings(columns)})`];
}

function otherScaleLines(entry: Inference, plan: AnalysisPlan, scale: 'logarithm' | 'square root'): string {
  const [to, from] = scale === 'logarithm' ? ['log', 'exp'] : ['sqrt', 'function(x) pmax(0, x)^2'];
  return [
    '# Spread grows with the mean: the same analysis on another scale, its means turned back.',
    `d$.value <- ${to}(d$.value)`,
    ...fitLines(entry, plan, 'other'),
    `result$transformed <- on_other_scale(other, ${from})`,
  ].join('\n');
}

function rankLines(entry: Inference, plan: AnalysisPlan): string {
  const lines: string[] = [];
  if (entry.rank_test && entry.rank_test.statistic !== null) {
    lines.push('result$rank_test <- rank_test(d, fit, design)');
  }
  if (arrangementsCounted(entry, plan)) {
    const { design } = plan;
    const single = design.terms.filter(({ factors }) => factors.length === 1);
    const finest = single.filter(({ unit }) => unit === design.finest).map(({ name }) => name);
    const coarser = design.terms.filter(({ unit }) => unit !== design.finest).map(({ unit }) => unit);
    const unit = coarser.includes('plot') ? 'plot' : coarser[0];
    const within = ['block', ...(finest.length < single.length && unit ? [columnOfUnit(unit)] : [])];
    lines.push(
      `result$randomisation_test <- randomisation_test(d, fit, design, ${rStrings(finest)}, ${rStrings(within)})`,
    );
  }
  return lines.join('\n');
}

/** Whether every arrangement of the lots was counted, so that the script can count them too. */
export function arrangementsCounted(
  { randomisation_test: test }: Inference,
  { design }: AnalysisPlan,
): boolean {
  const square = design.blocks.some(([name]) => name === 'row');
  return test !== null && test.exact && test.p !== null && !square;
}
