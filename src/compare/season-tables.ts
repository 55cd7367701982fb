import { formatNumber } from '../compute/format/format-number.ts';
import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { formatBare, type InBothUnits } from '../compute/format/format-quantity.ts';
import { unitInBoth } from '../compute/format/unit-in-both.ts';
import { bareP } from '../compute/tables/inference/bare-p.ts';
import { noNumber, type PageTable, type TableColumn, type Text } from '../compute/tables/page-table.ts';
import type { Seasons } from '../model/generated/seasons.ts';

/** The name of a cultivar as a reader sees it. */
export type CultivarName = (id: string) => string;

type SeasonTrial = Seasons['trials'][number];

const alpha = 0.05;

function joined(parts: readonly (string | InBothUnits)[]): InBothUnits {
  const of = (side: 'metric' | 'us') =>
    parts.map((part) => (typeof part === 'string' ? part : (part[side] ?? part.metric))).join('');
  return { metric: of('metric'), us: of('us') };
}

function range(lower: number | null, upper: number | null, unit: string, digits: number): Text {
  if (lower === null || upper === null) return noNumber;
  return joined([formatBare(lower, unit, digits), ' to ', formatBare(upper, unit, digits)]);
}

/** The adjusted means, best first within each linked set. */
export function adjustedMeansTable(entry: Seasons, name: CultivarName): PageTable {
  const { unit } = entry;
  const digits = digitsAcrossSeasons(entry);
  const setOf = (cultivar: string) => entry.linked_sets.findIndex((set) => set.includes(cultivar));
  const rows = [...entry.adjusted_means].sort(
    (a, b) => setOf(a.cultivar) - setOf(b.cultivar) || b.mean - a.mean,
  );
  return {
    caption:
      'Adjusted means: what each cultivar would give on average over all trials of its linked set, each with its own 95% limits. Means of one set that share a letter are not told apart',
    columns: [
      { heading: 'Cultivar', numeric: false },
      { heading: 'Trials', numeric: true },
      { heading: 'Adjusted mean', unit: unitInBoth(unit), numeric: true },
      { heading: '95% limits', unit: unitInBoth(unit), numeric: true },
      { heading: 'Letters', numeric: false },
      { heading: 'Of the check', unit: '%', numeric: true },
      ...(entry.linked_sets.length > 1 ? [{ heading: 'Linked set', numeric: true }] : []),
    ],
    rows: rows.map((mean) => ({
      heading: name(mean.cultivar),
      cells: [
        String(mean.trials),
        formatBare(mean.mean, unit, digits),
        range(mean.lower, mean.upper, unit, digits),
        mean.letters ?? noNumber,
        mean.percent_of_check === null
          ? noNumber
          : formatPercent(mean.percent_of_check, 0).replace('%', '').trim(),
        ...(entry.linked_sets.length > 1 ? [String(setOf(mean.cultivar) + 1)] : []),
      ],
    })),
    notes: [],
  };
}

/** Cultivars by trials, holes shown as holes; where asked for, only some of the cultivars and the newest trials. */
export function cellsTable(
  entry: Seasons,
  name: CultivarName,
  only: { cultivars?: ReadonlySet<string>; newest?: number } = {},
): PageTable {
  const labels = seasonNames(entry.trials);
  const trials = entry.trials.slice(-(only.newest ?? entry.trials.length));
  const rows = entry.adjusted_means.filter(({ cultivar }) => only.cultivars?.has(cultivar) ?? true);
  const part = [
    ...(rows.length < entry.adjusted_means.length
      ? [`${String(rows.length)} of ${String(entry.adjusted_means.length)} cultivars`]
      : []),
    ...(trials.length < entry.trials.length
      ? [`the newest ${String(trials.length)} of ${String(entry.trials.length)} trials`]
      : []),
  ].join(', ');
  const digits = digitsAcrossSeasons(entry);
  const means = new Map(entry.cells.map(({ cultivar, trial, mean }) => [`${cultivar} ${trial}`, mean]));
  return {
    caption: `The trials' own means${part === '' ? '' : ` (${part})`}; a dash where a cultivar was not grown`,
    columns: [
      { heading: 'Cultivar', numeric: false },
      ...trials.map(({ id, replicated }) => ({
        heading: `${labels.get(id)!}${replicated ? '' : '*'}`,
        unit: unitInBoth(entry.unit),
        numeric: true,
      })),
    ],
    rows: rows.map(({ cultivar }) => ({
      heading: name(cultivar),
      cells: trials.map(({ id }): Text => {
        const mean = means.get(`${cultivar} ${id}`);
        return mean === undefined ? noNumber : formatBare(mean, entry.unit, digits);
      }),
    })),
    notes: trials.some(({ replicated }) => !replicated)
      ? [
          '* A trial whose cultivars were not replicated, or that grew one cultivar: it has no error of its own.',
        ]
      : [],
  };
}

/** Every pair of a linked set, the widest difference first; null where none has an error. */
export function differencesTable(entry: Seasons, name: CultivarName): PageTable | null {
  const known = entry.differences.filter(({ p_adjusted }) => p_adjusted !== null);
  if (known.length === 0) return null;
  const digits = digitsAcrossSeasons(entry);
  return {
    caption:
      'Differences of adjusted means: the first less the second. The limits hold for all pairs of a linked set at once (Tukey–Kramer, 95%)',
    columns: [
      { heading: 'Pair', numeric: false },
      { heading: 'Difference', unit: unitInBoth(entry.unit), numeric: true },
      { heading: '95% limits', unit: unitInBoth(entry.unit), numeric: true },
      { heading: 'Adjusted p', numeric: true },
    ],
    rows: [...known]
      .sort((a, b) => Math.abs(b.estimate) - Math.abs(a.estimate))
      .map((pair) => ({
        heading: `${name(pair.a)} less ${name(pair.b)}`,
        cells: [
          formatBare(pair.estimate, entry.unit, digits, { plus: true }),
          range(pair.lower, pair.upper, entry.unit, digits),
          bareP(pair.p_adjusted!, alpha),
        ],
      })),
    notes: [],
  };
}

/** How steady each cultivar was; null where none was in enough trials. */
export function steadinessTable(entry: Seasons, name: CultivarName): PageTable | null {
  if (entry.stability.length === 0) return null;
  const number = (value: number | null, digits: number) =>
    value === null ? noNumber : formatNumber(value, digits);
  return {
    caption:
      'Steadiness: a slope above 1 gains more than others where trials yield more; the less of the other numbers, the steadier',
    columns: [
      { heading: 'Cultivar', numeric: false },
      { heading: 'Trials', numeric: true },
      { heading: 'Slope', numeric: true },
      { heading: 'Its standard error', numeric: true },
      { heading: 'Deviation mean square', numeric: true },
      { heading: 'Ecovalence', numeric: true },
      { heading: 'Stability variance', numeric: true },
      { heading: 'Better, worse than the check', numeric: true },
    ],
    rows: entry.stability.map((each) => ({
      heading: name(each.cultivar),
      cells: [
        String(each.trials),
        number(each.regression_slope, 2),
        number(each.slope_se, 2),
        number(each.deviation_mean_square, 1),
        number(each.ecovalence, 1),
        number(each.stability_variance, 1),
        `${each.wins}, ${each.losses}`,
      ],
    })),
    notes: [],
  };
}

/** What differs between the trials, so that like can be held beside like. */
export function trialsTable(entry: Seasons, title: (trial: string) => string): PageTable {
  const { trials } = entry;
  const number = (value: number | null) => (value === null ? noNumber : formatNumber(value, 1));
  const weighed = (trial: SeasonTrial) => trial.variable.toLowerCase();
  // What is the same for every trial needs no column where it is said elsewhere.
  const several = new Set(trials.map(weighed)).size > 1;
  const averaged = trials.some(({ averaged_over: over }) => over !== '');
  const columns: readonly (TableColumn & { of: (trial: SeasonTrial) => string })[] = [
    { heading: 'Season', numeric: false, of: ({ season }) => season },
    { heading: 'Setting', numeric: false, of: ({ setting }) => setting },
    {
      heading: 'Days',
      numeric: true,
      of: ({ days }) => (days === null ? noNumber : String(days)),
    },
    { heading: 'Plants a pot', numeric: true, of: (trial) => trial.plants_per_pot },
    { heading: 'Pots a m²', numeric: true, of: (trial) => number(trial.pots_per_m2) },
    { heading: 'Strength', unit: 'mS/cm', numeric: true, of: ({ ec }) => number(ec) },
    { heading: 'Cuts', numeric: true, of: ({ cuts }) => String(cuts) },
    ...(several ? [{ heading: 'Weighed', numeric: false, of: weighed }] : []),
    ...(averaged
      ? [
          {
            heading: 'Averaged over',
            numeric: false,
            of: (trial: SeasonTrial) => trial.averaged_over || noNumber,
          },
        ]
      : []),
    { heading: 'Replicated', numeric: false, of: ({ replicated }) => (replicated ? 'yes' : 'no') },
  ];
  return {
    caption: 'The trials, and what differed between them',
    columns: [{ heading: 'Trial', numeric: false }, ...columns.map(headed)],
    rows: trials.map((trial) => ({ heading: title(trial.id), cells: columns.map(({ of }) => of(trial)) })),
    notes: entry.trials_differ,
  };
}

/** A column without what fills it. */
function headed({ heading, unit, numeric }: TableColumn): TableColumn {
  return { heading, numeric, ...(unit === undefined ? {} : { unit }) };
}
