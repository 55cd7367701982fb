import { say } from '../../model/say.ts';
import type { Findings, PositionEffects } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatBare } from '../format/format-quantity.ts';
import { formatLimits } from '../format/format-range.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { measureName } from './measures.ts';
import { distinct, noNumber, type PageTable, type Text } from './page-table.ts';
import { digitsFor, joined, orNothing } from './treatment-summary.ts';
import { bareP } from './inference/bare-p.ts';

/** The level that an effect of place is held against. */
const alpha = 0.05;

/**
 * Effects of place, a table for each measure and cut. Where nothing in the trial is tested, slopes and means
 * are described without p, so that no page of an untested trial holds one.
 */
export function positionTables(trial: Trial, findings: Findings): PageTable[] {
  const tested = findings.inference.some(({ verdict }) => verdict === 'tested');
  const groups = Map.groupBy(findings.position, ({ measure, cut }) => `${measure} ${cut}`);
  return [...groups.values()].map((rows) => positionTable(trial, findings, rows, tested));
}

function positionTable(
  trial: Trial,
  findings: Findings,
  rows: readonly PositionEffects[],
  tested: boolean,
): PageTable {
  const { unit, name } = findings.variable;
  const { measure, cut } = rows[0]!;
  const digits = digitsFor(
    trial,
    findings.treatments.flatMap((each) => each[measure] ?? []),
  );
  const both = unitInBoth(unit);
  const slope = ({ slope: value, se }: PositionEffects['rows']): Text =>
    value === null
      ? noNumber
      : joined(
          formatLimits(value, se ?? value, unit, digits, { plus: true }).lower,
          ' ± ',
          se === null ? { metric: noNumber, us: noNumber } : formatLimits(value, se, unit, digits).upper,
        );
  const mean = ({ mean: value, n }: PositionEffects['edge']): Text =>
    value === null
      ? noNumber
      : joined(formatBare(value, unit, digits), ', n = ', { metric: String(n), us: String(n) });
  const p = (value: number | null | undefined) =>
    tested ? [orNothing(value ?? null, (each) => bareP(each, alpha))] : [];
  const pColumn = tested ? [{ heading: 'p', numeric: true }] : [];
  const variable = `${name.toLowerCase()} ${measureName(measure)}`;
  const measured =
    findings.treatments_by_cut.length < 2
      ? variable
      : cut === 'all'
        ? say('{variable}, all cuts', { variable })
        : say('{measure}, cut {cut}', { measure: variable, cut });
  return {
    caption: say(
      'Effects of place on {measured}, after treatments are allowed for: change for one step along the grid ± its standard error, and the means of n positions',
      { measured },
    ),
    columns: [
      { heading: say('Container'), numeric: false },
      { heading: say('A row on'), unit: both, numeric: true },
      ...pColumn,
      { heading: say('A column on'), unit: both, numeric: true },
      ...pColumn,
      { heading: say('Edge'), unit: both, numeric: true },
      { heading: say('Interior'), unit: both, numeric: true },
      { heading: say('Moran’s I'), numeric: true },
      { heading: say('I expected'), numeric: true },
      ...pColumn,
    ],
    rows: rows.map((each) => ({
      heading: each.container,
      cells: [
        slope(each.rows),
        ...p(each.rows.p),
        slope(each.columns),
        ...p(each.columns.p),
        mean(each.edge),
        mean(each.interior),
        orNothing(each.morans_i.i, (value) => formatNumber(value, 2)),
        orNothing(each.morans_i.expected, (value) => formatNumber(value, 2)),
        ...p(each.morans_i.exact_p ?? each.morans_i.p),
      ],
    })),
    notes: distinct(
      rows.flatMap((each) => [
        each.reason,
        each.rows.reason,
        each.columns.reason,
        each.edge.reason,
        each.interior.reason,
        each.morans_i.reason,
      ]),
    ),
  };
}
