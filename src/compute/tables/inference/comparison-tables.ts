import { say } from '../../../model/say.ts';
import type { Findings, Inference } from '../../../model/findings.ts';
import type { Treatment, Trial } from '../../../model/trial.ts';
import { formatNumber } from '../../format/format-number.ts';
import { formatBare } from '../../format/format-quantity.ts';
import { formatLimits } from '../../format/format-range.ts';
import { type LevelNames, treatmentName } from '../../format/level-names.ts';
import { unitInBoth } from '../../format/unit-in-both.ts';
import {
  noNumber,
  distinct,
  type PageTable,
  type TableCell,
  type TableColumn,
  type Text,
} from '../page-table.ts';
import { digitsFor, joined, orNothing, toWord } from '../treatment-summary.ts';
import { formatDf } from './anova-table.ts';
import { bareP } from './bare-p.ts';
import { families, termName } from './names-of.ts';

/** What the tables of an analysis share: the trial's words, the variable's unit and the decimals. */
interface Setting {
  trial: Trial;
  unit: string;
  digits: number;
  name: (treatment: Treatment) => string;
  alpha: number;
  /** The anchor of the analysis's working. */
  working: string;
}

/** The comparisons of one analysis, ready to print, a table for each family. */
export function comparisonTables(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
  inference: Inference,
  working: string,
) {
  const described =
    inference.cut === 'all'
      ? findings.treatments
      : (findings.treatments_by_cut.find(({ cut }) => cut === inference.cut)?.treatments ?? []);
  const setting: Setting = {
    trial,
    unit: findings.variable.unit,
    digits: digitsFor(
      trial,
      described.flatMap((each) => each[inference.measure] ?? []),
    ),
    name: (treatment) => treatmentName(trial, treatment, names),
    alpha: inference.alpha,
    working,
  };
  return {
    means: families(inference.means, ({ treatment }) => treatment).map(({ term, rows }) =>
      meansTable(setting, term, rows),
    ),
    differences: families(inference.differences, ({ a }) => a).map(({ term, rows }) =>
      differencesTable(setting, term, rows),
    ),
    check: inference.against_check.length === 0 ? null : checkTable(setting, inference.against_check),
  };
}

const treatmentColumn = (): TableColumn => ({ heading: say('Treatment'), numeric: false });

function quantityColumn({ unit }: Setting, heading: string): TableColumn {
  return { heading, unit: unitInBoth(unit), numeric: true };
}

function quantity({ unit, digits }: Setting, value: number | null, plus = false): Text {
  return orNothing(value, (number) => formatBare(number, unit, digits, { plus }));
}

function limits({ unit, digits }: Setting, lower: number | null, upper: number | null, plus = false): Text {
  if (lower === null || upper === null) return noNumber;
  const printed = formatLimits(lower, upper, unit, digits, { plus });
  return joined(printed.lower, toWord(), printed.upper);
}

function linked({ working }: Setting, text: Text): Text | TableCell {
  return text === noNumber ? text : { text, working };
}

function meansTable(setting: Setting, term: string, rows: Inference['means']): PageTable {
  const lettered = rows.some(({ letters }) => letters !== null);
  return {
    caption:
      say('Means, {term}, each with its own 95% limits.', { term: termName(setting.trial, term) }) +
      (lettered
        ? ` ${say('Means that share a letter are not told apart by this trial; that does not make them equal.')}`
        : ''),
    columns: [
      treatmentColumn(),
      quantityColumn(setting, say('Mean')),
      quantityColumn(setting, say('Standard error')),
      { heading: say('df'), numeric: true },
      quantityColumn(setting, say('95% limits')),
      ...(lettered ? [{ heading: say('Letters'), numeric: false }] : []),
    ],
    rows: rows.map((row) => ({
      heading: setting.name(row.treatment),
      cells: [
        linked(setting, quantity(setting, row.mean)),
        quantity(setting, row.se),
        orNothing(row.df, formatDf),
        limits(setting, row.lower, row.upper),
        ...(lettered ? [row.letters ?? noNumber] : []),
      ],
    })),
    notes: distinct(rows.map(({ reason }) => reason)),
  };
}

function differencesTable(setting: Setting, term: string, rows: Inference['differences']): PageTable {
  return {
    caption: say(
      'Differences, {term}: the first less the second. The limits hold for all pairs at once (Tukey–Kramer, 95%).',
      { term: termName(setting.trial, term) },
    ),
    columns: [
      { heading: say('Pair'), numeric: false },
      quantityColumn(setting, say('Difference')),
      quantityColumn(setting, say('95% limits')),
      quantityColumn(setting, say('Standard error')),
      { heading: say('Adjusted p'), numeric: true },
    ],
    rows: rows.map((row) => ({
      heading: say('{a} less {b}', { a: setting.name(row.a), b: setting.name(row.b) }),
      cells: [
        linked(setting, quantity(setting, row.estimate, true)),
        limits(setting, row.lower, row.upper, true),
        quantity(setting, row.se),
        orNothing(row.p_adjusted, (p) => bareP(p, setting.alpha)),
      ],
    })),
    notes: distinct(rows.map(({ reason }) => reason)),
  };
}

function checkTable(setting: Setting, rows: Inference['against_check']): PageTable {
  const checks = (setting.trial.metadata.factors ?? []).filter(({ check }) => check !== undefined);
  // Beside a second check, "the check" would not say which.
  const heading = (treatment: Treatment): string => {
    const own = checks.find(({ id }) => Object.hasOwn(treatment, id));
    const a = setting.name(treatment);
    if (checks.length < 2 || own === undefined) return a;
    return say('{a} less {b}', { a, b: setting.name({ [own.id]: own.check! }) });
  };
  return {
    caption:
      checks.length < 2
        ? say('Against the check: each less the check, with limits that hold for all at once (Dunnett, 95%).')
        : say(
            'Against the check: each less the check of its factor, with limits that hold for all of that factor at once (Dunnett, 95%).',
          ),
    columns: [
      treatmentColumn(),
      quantityColumn(setting, say('Difference')),
      quantityColumn(setting, say('95% limits')),
      { heading: say('Of the check'), unit: '%', numeric: true },
      { heading: say('Adjusted p'), numeric: true },
    ],
    rows: rows.map((row) => ({
      heading: heading(row.treatment),
      cells: [
        linked(setting, quantity(setting, row.estimate, true)),
        limits(setting, row.lower, row.upper, true),
        orNothing(row.percent_of_check, (value) => formatNumber(value, 1)),
        orNothing(row.p_adjusted, (p) => bareP(p, setting.alpha)),
      ],
    })),
    notes: distinct(rows.map(({ reason }) => reason)),
  };
}
