/** Makes a finished trial from a table of weights, for tests of the computing. */
import type { HarvestRecord, Position, Status, Trial, TrialMetadata } from '../../src/model/trial.ts';

export interface PlantOfTrial {
  container: string;
  row?: number;
  column?: number;
  block?: string;
  plot?: string;
  treatment: Record<string, string>;
  /** Null with a status: weight not known, dead and so on. */
  weight: number | null;
  status?: Status;
  cut?: number;
  plant?: number | null;
}

export interface TrialOptions {
  design?: TrialMetadata['design'];
  check?: Record<string, string>;
  variable?: Partial<TrialMetadata['variables'][number]>;
  containers?: Partial<TrialMetadata['containers'][number]>;
  cuts?: string[];
  metadata?: Partial<TrialMetadata>;
}

/**
 * One entry a plant and cut. Plants that give no row and column get positions of their own, in order, one
 * column wide; several entries at one place are the plants of one pot, numbered from 1.
 */
export function trialOf(plants: readonly PlantOfTrial[], options: TrialOptions = {}): Trial {
  const rowsTaken = new Map<string, number>();
  const placed = plants.map((plant) => {
    const next = (rowsTaken.get(plant.container) ?? 0) + 1;
    const row = plant.row ?? next;
    rowsTaken.set(plant.container, Math.max(next, row));
    return { ...plant, row, column: plant.column ?? 1 };
  });
  const positions = new Map<string, Position>();
  const plantNumbers = new Map<string, number>();
  const harvest = placed.map((plant, index): HarvestRecord => {
    const key = `${plant.container} ${plant.row} ${plant.column}`;
    const cut = plant.cut ?? 1;
    const number = (plantNumbers.get(`${key} ${cut}`) ?? 0) + 1;
    plantNumbers.set(`${key} ${cut}`, number);
    const known = positions.get(key);
    if (known) known.plants = Math.max(known.plants, number);
    else {
      positions.set(key, {
        container: plant.container,
        row: plant.row,
        column: plant.column,
        treatment: plant.treatment,
        block: plant.block ?? null,
        plot: plant.plot ?? null,
        plants: 1,
        line: positions.size + 2,
      });
    }
    return {
      container: plant.container,
      row: plant.row,
      column: plant.column,
      cut,
      date: '2025-10-20',
      plant: plant.plant === undefined ? number : plant.plant,
      status: plant.status ?? (plant.weight === null ? 'not weighed' : 'weighed'),
      values: { fresh_weight: plant.weight },
      potTotal: null,
      remark: '',
      line: index + 2,
    };
  });
  return {
    id: 'test-trial',
    metadata: metadataOf(placed, options),
    positions: [...positions.values()],
    harvest,
    readings: [],
    queries: [],
    files: new Map(),
  };
}

/** A list that its schema wants at least one item of. */
function nonEmpty<T>(items: T[]): [T, ...T[]] {
  const [first, ...rest] = items;
  if (first === undefined) throw new Error('trialOf requires at least one plant');
  return [first, ...rest];
}

function metadataOf(
  plants: readonly (PlantOfTrial & { row: number; column: number })[],
  options: TrialOptions,
): TrialMetadata {
  const factorIds = Object.keys(plants[0]!.treatment);
  const containers = [...new Set(plants.map(({ container }) => container))];
  const largest = (container: string, side: 'row' | 'column') =>
    Math.max(...plants.filter((plant) => plant.container === container).map((plant) => plant[side]));
  return {
    title: 'A trial for the tests',
    version: '1.0.0',
    status: 'finished',
    question: 'Does the computing agree with the published numbers?',
    crop: { name: 'Lettuce' },
    season: { year: 2025, name: 'autumn' },
    dates: { sown: '2025-08-25', transplanted: '2025-09-12', cuts: nonEmpty(options.cuts ?? ['2025-10-20']) },
    site: { name: 'Nowhere', setting: 'rain shelter' },
    people: [{ name: 'Nobody', part: 'grower' }],
    licence: 'CC0-1.0',
    factors: nonEmpty(
      factorIds.map((id) => ({
        id,
        name: id,
        levels: nonEmpty(
          [...new Set(plants.map(({ treatment }) => treatment[id]!))].map((level) => ({ id: level })),
        ),
        ...(options.check?.[id] === undefined ? {} : { check: options.check[id] }),
      })),
    ),
    design: options.design ?? {
      arrangement: 'completely randomised',
      allotted: 'position',
      randomised: true,
    },
    containers: nonEmpty(
      containers.map((id) => ({
        id,
        kind: 'tank' as const,
        rows: largest(id, 'row'),
        columns: largest(id, 'column'),
        ...options.containers,
      })),
    ),
    variables: [
      {
        id: 'fresh_weight',
        name: 'Fresh weight',
        of: 'plant',
        kind: 'measured',
        unit: 'g',
        ...options.variable,
      },
    ],
    releases: [{ version: '1.0.0', date: '2025-11-02' }],
    ...options.metadata,
  };
}
