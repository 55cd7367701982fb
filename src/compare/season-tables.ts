import { formatNumber } from '../compute/format/format-number.ts';
import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { formatBare, type InBothUnits } from '../compute/format/format-quantity.ts';
import { unitInBoth } from '../compute/format/unit-in-both.ts';
import { bareP } from '../compute/tables/inference/bare-p.ts';
import { noNumber, type PageTable, type TableColumn, type Text } from '../compute/tables/page-table.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { say } from '../model/say.ts';

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
  return joined([formatBare(lower, unit, digits), ` ${say('to')} `, formatBare(upper, unit, digits)]);
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
    caption: say(
      'Adjusted means: what each cultivar would give on average over all trials of its linked set, each with its own 95% limits. Means of one set that share a letter are not told apart',
    ),
    columns: [
      { heading: say('Cultivar'), numeric: false },
      { heading: say('Trials'), numeric: true },
      { heading: say('Adjusted mean'), unit: unitInBoth(unit), numeric: true },
      { heading: say('95% limits'), unit: unitInBoth(unit), numeric: true },
      { heading: say('Letters'), numeric: false },
      { heading: say('Of the check'), unit: '%', numeric: true },
      ...(entry.linked_sets.length > 1 ? [{ heading: say('Linked set'), numeric: true }] : []),
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
      ? [say('{count} of {all} cultivars', { count: rows.length, all: entry.adjusted_means.length })]
      : []),
    ...(trials.length < entry.trials.length
      ? [say('the newest {count} of {all} trials', { count: trials.length, all: entry.trials.length })]
      : []),
  ].join(', ');
  const digits = digitsAcrossSeasons(entry);
  const means = new Map(entry.cells.map(({ cultivar, trial, mean }) => [`${cultivar} ${trial}`, mean]));
  return {
    caption: say("The trials' own means{part}; a dash where a cultivar was not grown", {
      part: part === '' ? '' : ` (${part})`,
    }),
    columns: [
      { heading: say('Cultivar'), numeric: false },
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
          say(
            '* A trial whose cultivars were not replicated, or that grew one cultivar: it has no error of its own.',
          ),
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
    caption: say(
      'Differences of adjusted means: the first less the second. The limits hold for all pairs of a linked set at once (Tukey–Kramer, 95%)',
    ),
    columns: [
      { heading: say('Pair'), numeric: false },
      { heading: say('Difference'), unit: unitInBoth(entry.unit), numeric: true },
      { heading: say('95% limits'), unit: unitInBoth(entry.unit), numeric: true },
      { heading: say('Adjusted p'), numeric: true },
    ],
    rows: [...known]
      .sort((a, b) => Math.abs(b.estimate) - Math.abs(a.estimate))
      .map((pair) => ({
        heading: say('{a} less {b}', { a: name(pair.a), b: name(pair.b) }),
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
    caption: say(
      'Steadiness: a slope above 1 gains more than others where trials yield more; the less of the other numbers, the steadier',
    ),
    columns: [
      { heading: say('Cultivar'), numeric: false },
      { heading: say('Trials'), numeric: true },
      { heading: say('Slope'), numeric: true },
      { heading: say('Its standard error'), numeric: true },
      { heading: say('Deviation mean square'), numeric: true },
      { heading: say('Ecovalence'), numeric: true },
      { heading: say('Stability variance'), numeric: true },
      { heading: say('Better, worse than the check'), numeric: true },
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
    { heading: say('Season'), numeric: false, of: ({ season }) => season },
    { heading: say('Setting'), numeric: false, of: ({ setting }) => say(setting) },
    {
      heading: say('Days'),
      numeric: true,
      of: ({ days }) => (days === null ? noNumber : String(days)),
    },
    { heading: say('Plants a pot'), numeric: true, of: (trial) => trial.plants_per_pot },
    { heading: say('Pots a m²'), numeric: true, of: (trial) => number(trial.pots_per_m2) },
    { heading: say('Strength'), unit: 'mS/cm', numeric: true, of: ({ ec }) => number(ec) },
    { heading: say('Cuts'), numeric: true, of: ({ cuts }) => String(cuts) },
    ...(several ? [{ heading: say('Weighed'), numeric: false, of: weighed }] : []),
    ...(averaged
      ? [
          {
            heading: say('Averaged over'),
            numeric: false,
            of: (trial: SeasonTrial) => trial.averaged_over || noNumber,
          },
        ]
      : []),
    {
      heading: say('Replicated'),
      numeric: false,
      of: ({ replicated }) => (replicated ? say('yes') : say('no')),
    },
  ];
  return {
    caption: say('The trials, and what differed between them'),
    columns: [{ heading: say('Trial'), numeric: false }, ...columns.map(headed)],
    rows: trials.map((trial) => ({ heading: title(trial.id), cells: columns.map(({ of }) => of(trial)) })),
    notes: entry.trials_differ,
  };
}

/** A column without what fills it. */
function headed({ heading, unit, numeric }: TableColumn): TableColumn {
  return { heading, numeric, ...(unit === undefined ? {} : { unit }) };
}
