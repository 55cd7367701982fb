import { countsOf } from '../../src/compute/counts.ts';
import { describe } from '../../src/compute/describe.ts';
import { yieldsOf } from '../../src/compute/yields.ts';
import type { Findings, Inference } from '../../src/model/findings.ts';
import type {
  Container,
  HarvestRecord,
  Position,
  Reading,
  Status,
  Trial,
  TrialMetadata,
} from '../../src/model/trial.ts';

/** What stood in a position: its level and its weight in g, or a status in place of a weight. */
export type Grown = readonly [level: string, outcome: number | Exclude<Status, 'weighed'>];

const metadata = (containers: readonly Container[], extra: Partial<TrialMetadata>): TrialMetadata => ({
  title: 'An invented trial',
  version: '1.0.0',
  status: 'finished',
  question: 'Which is the heavier?',
  crop: { name: 'Lettuce', species: 'Lactuca sativa' },
  season: { year: 2025, name: 'autumn' },
  dates: { sown: '2025-08-25', germinated: '2025-08-29', transplanted: '2025-09-12', cuts: ['2025-10-20'] },
  site: { name: 'Fernhollow', setting: 'rain shelter' },
  people: [{ name: 'A. Grower', part: 'grower' }],
  licence: 'CC0-1.0',
  factors: [
    {
      id: 'cultivar',
      name: 'Cultivar',
      kind: 'cultivar',
      levels: [
        { id: 'cobalt-wren', name: 'Cobalt Wren' },
        { id: 'russet-plover', name: 'Russet Plover' },
        { id: 'slate-egret', name: 'Slate Egret' },
      ],
      check: 'cobalt-wren',
    },
  ],
  design: { arrangement: 'randomised blocks', allotted: 'plot', randomised: true },
  containers: [containers[0]!, ...containers.slice(1)],
  variables: [
    { id: 'fresh_weight', name: 'Fresh weight', of: 'plant', kind: 'measured', unit: 'g', resolution: 1 },
  ],
  ...extra,
});

/** A trial with one plant a pot: the grid of each container row by row; null where nothing belongs to the trial. */
export function trialOf(
  grids: readonly (Partial<Container> & { id: string; grown: readonly (readonly (Grown | null)[])[] })[],
  extra: Partial<TrialMetadata> = {},
  readings: readonly Reading[] = [],
): Trial {
  const containers: Container[] = grids.map(({ grown, ...container }) => ({
    kind: 'tank',
    rows: grown.length,
    columns: grown[0]!.length,
    ...container,
  }));
  const positions: Position[] = [];
  const harvest: HarvestRecord[] = [];
  for (const { id, grown } of grids) {
    for (const [r, row] of grown.entries()) {
      for (const [c, cell] of row.entries()) {
        if (cell === null) continue;
        const place = { container: id, row: r + 1, column: c + 1 };
        const [level, outcome] = cell;
        positions.push({
          ...place,
          treatment: { cultivar: level },
          block: null,
          plot: null,
          plants: 1,
          line: null,
        });
        const weighed = typeof outcome === 'number';
        harvest.push({
          ...place,
          cut: 1,
          date: '2025-10-20',
          plant: 1,
          status: weighed ? 'weighed' : outcome,
          values: { fresh_weight: weighed ? outcome : null },
          potTotal: null,
          remark: '',
          line: harvest.length + 2,
        });
      }
    }
  }
  return {
    id: 'example',
    metadata: metadata(containers, extra),
    positions,
    harvest,
    readings,
    queries: [],
    files: new Map(),
  };
}

const [wren, plover, egret] = ['cobalt-wren', 'russet-plover', 'slate-egret'] as const;

const reading = (
  date: string,
  container: string,
  level: number,
  ec: number,
  ph: number,
  added: number | null,
): Reading => ({
  date,
  container,
  level,
  added,
  ec,
  ph,
  temperature: null,
  rain: null,
  overflow: null,
  remark: '',
  line: 2,
});

/** Two tanks of three rows and three columns, with one plant of every fate. */
export function blockTrial(): Trial {
  const landmarks = {
    row_1: 'wall side',
    column_1: 'north',
    inside: { length: 87, width: 57, unit: 'cm' },
  } as const;
  return trialOf(
    [
      {
        id: 'T1',
        block: '1',
        ...landmarks,
        grown: [
          [
            [wren, 152],
            [wren, 139],
            [egret, 166],
          ],
          [
            [plover, 118],
            [plover, 'dead'],
            [egret, 171],
          ],
          [
            [plover, 131],
            [wren, 147],
            [egret, 158],
          ],
        ],
      },
      {
        id: 'T2',
        block: '2',
        ...landmarks,
        grown: [
          [
            [egret, 180],
            [plover, 102],
            [wren, 'not weighed'],
          ],
          [
            [egret, 175],
            [plover, 'culled'],
            [wren, 160],
          ],
          [
            [egret, 149],
            [plover, 121],
            [wren, 'no regrowth'],
          ],
        ],
      },
    ],
    {
      events: [
        { date: '2025-09-20', what: 'Slugs on two plants, picked off by hand.', where: 'T2' },
        { date: '2025-10-02', what: 'Tip burn on the outer leaves.', where: 'T1 1-2 3' },
      ],
    },
    [
      reading('2025-09-12', 'T1', 9, 1.5, 6.1, null),
      reading('2025-09-12', 'T2', 9.1, 1.5, 6.2, null),
      reading('2025-09-26', 'T1', 7.4, 1.4, 6.4, 8),
      reading('2025-09-26', 'T2', 7.7, 1.3, 6.3, 6),
      reading('2025-10-10', 'T1', 6.2, 1.2, 6.6, null),
      reading('2025-10-10', 'T2', 6.9, 1.25, 6.5, null),
      reading('2025-10-20', 'T1', 4.4, 1.1, 6.8, null),
      reading('2025-10-20', 'T2', 5.6, 1.2, 6.6, null),
    ],
  );
}

const treatment = (level: string) => ({ cultivar: level });

/** An analysis of the block trial as the findings hold one. Its numbers are made up, to be drawn and not believed. */
export function madeUpInference(): Inference {
  return {
    measure: 'per_plant_harvested',
    cut: 'all',
    units: [
      { factor: 'cultivar', experimental_unit: 'plot', replicates: { [wren]: 4, [plover]: 4, [egret]: 4 } },
    ],
    verdict: 'tested',
    reason: '',
    method: 'analysis of variance',
    model: 'block + cultivar',
    anova: [],
    variance_components: [],
    means: [
      { treatment: treatment(wren), mean: 149.5, se: 4, df: 6, lower: 139.7, upper: 159.3, letters: 'a' },
      { treatment: treatment(plover), mean: 118, se: 4, df: 6, lower: 108.2, upper: 127.8, letters: 'b' },
      { treatment: treatment(egret), mean: 166.5, se: 4, df: 6, lower: 156.7, upper: 176.3, letters: 'a' },
    ],
    differences: [
      {
        a: treatment(plover),
        b: treatment(wren),
        estimate: -31.5,
        se: 5.7,
        df: 6,
        lower: -49,
        upper: -14,
        p_adjusted: 0.004,
      },
      {
        a: treatment(egret),
        b: treatment(wren),
        estimate: 17,
        se: 5.7,
        df: 6,
        lower: -0.5,
        upper: 34.5,
        p_adjusted: 0.056,
      },
      {
        a: treatment(egret),
        b: treatment(plover),
        estimate: 48.5,
        se: 5.7,
        df: 6,
        lower: 31,
        upper: 66,
        p_adjusted: 0.0007,
      },
    ],
    against_check: [
      {
        treatment: treatment(plover),
        estimate: -31.5,
        lower: -47.8,
        upper: -15.2,
        p_adjusted: 0.003,
        percent_of_check: 78.9,
      },
      {
        treatment: treatment(egret),
        estimate: 17,
        lower: 0.7,
        upper: 33.3,
        p_adjusted: 0.042,
        percent_of_check: 111.4,
      },
    ],
    least_significant_difference: 14,
    cv_percent: 9.2,
    alpha: 0.05,
    checks: null,
    randomisation_test: null,
    residuals: [-9, 6, -4, 3, -1, 12, 0, -7].map((residual, index) => ({
      unit: `P${String(index + 1)}`,
      container: index < 4 ? 'T1' : 'T2',
      fitted: 120 + index * 7,
      residual,
      normal_score: [-1.43, 0.85, -0.47, 0.47, -0.15, 1.43, 0.15, -0.85][index]!,
    })),
  };
}

/** The description of a trial without any inference, with further parts put in their place. */
export function findingsOf(trial: Trial, extra: Partial<Findings> = {}): Findings {
  const { id, name } = trial.metadata.variables[0];
  return {
    trial: trial.id,
    version: trial.metadata.version,
    variable: { id, name, unit: 'g' },
    counts: countsOf(trial),
    treatments: describe(trial, yieldsOf(trial, 'all'), 'all'),
    treatments_by_cut: [],
    inference: [],
    position: [],
    water: [],
    nutrients: null,
    next_trial: [],
    ...extra,
  };
}

/** Findings with made-up inference, residuals by position and plans for the next trial. */
export function blockFindings(trial: Trial): Findings {
  const none = { slope: null, se: null, t: null, df: null, p: null };
  const cell = { mean: null, n: 0 };
  return findingsOf(trial, {
    inference: [madeUpInference()],
    position: ['T1', 'T2'].map((container) => ({
      container,
      measure: 'per_plant_harvested',
      cut: 'all',
      rows: none,
      columns: none,
      edge: cell,
      interior: cell,
      morans_i: { i: null, expected: null, variance: null, p: null },
      halves: [],
      residuals: trial.positions
        .filter((position) => position.container === container && position.row + position.column !== 4)
        .map(({ row, column }, index) => ({
          row,
          column,
          residual: [-14.2, 3.1, 0.4, 9.8, -6.5, 1.2, -2.2][index % 7]!,
        })),
    })),
    next_trial: [10, 15, 20, 25, 30].flatMap((difference) =>
      [0.8, 0.9].map((power) => ({
        difference_percent: difference,
        power,
        replicates_needed: Math.ceil((power === 0.8 ? 1500 : 2000) / difference ** 2) + 1,
        cv_used: 9.2,
        from: 'this trial',
      })),
    ),
  });
}
