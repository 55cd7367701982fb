/** A content folder with one growing trial of 96 plants, and weights for it. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { seededRandom } from '../../src/statistics/seeded-random.ts';

export const growingId = 'winter-lettuce-2025';
const tanks = ['T1', 'T2', 'T3', 'T4'];
const [rows, columns] = [4, 6];
const levels = ['wren', 'egret', 'plover'] as const;

export const growingYaml = `title: Three winter lettuces in four tanks
version: 0.1.0
status: growing
question: Which of the three is the heaviest in winter light?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: 2025, name: winter}
dates: {sown: 2025-08-25, transplanted: 2025-09-12}
site: {name: Fernhollow, setting: rain shelter}
people: [{name: Orla Fennimoor, part: grower}]
licence: CC0-1.0
factors:
  - id: kind
    name: Kind
    levels: [{id: wren}, {id: egret}, {id: plover}]
    check: wren
design: {arrangement: randomised blocks, allotted: position, randomised: true}
containers:
${tanks.map((id, index) => `  - {id: ${id}, kind: tank, rows: ${rows}, columns: ${columns}, row_1: wall side, column_1: door end, block: "${index + 1}"}`).join('\n')}
variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g, resolution: 1, lowest: 5, highest: 600}
`;

/** What stands where; the weight that it will have, in g. */
export interface GrowingPlant {
  container: string;
  row: number;
  column: number;
  level: (typeof levels)[number];
  weight: number;
}

/** The plants in walking order, with weights among which none is to be asked about. */
export const growingPlants: readonly GrowingPlant[] = makePlants();

function makePlants(): GrowingPlant[] {
  const { uniform } = seededRandom(9603);
  const usual = { wren: 140, egret: 155, plover: 128 };
  return tanks.flatMap((container) => {
    const drawn = Array.from({ length: rows * columns }, (_, index) => ({
      level: levels[index % levels.length]!,
      at: uniform(),
    }));
    drawn.sort((a, b) => a.at - b.at);
    return drawn.map(({ level }, index) => ({
      container,
      row: Math.floor(index / columns) + 1,
      column: (index % columns) + 1,
      level,
      weight: usual[level] - 14 + Math.floor(uniform() * 29),
    }));
  });
}

export const growingLayout = [
  'container,row,column,kind',
  ...growingPlants.map(({ container, row, column, level }) => [container, row, column, level].join()),
  '',
].join('\n');

/** Writes the content folder: a site under a path, and the trial. */
export async function writeGrowingContent(folder: string): Promise<void> {
  const trial = join(folder, 'trials', growingId);
  await mkdir(trial, { recursive: true });
  const site = [
    'title: A garden',
    'url: https://example.org/garden/',
    'publisher: Fernhollow',
    'licence: CC0-1.0',
    'language: en',
    'units: metric',
    '',
  ];
  await writeFile(join(folder, 'site.yaml'), site.join('\n'));
  await writeFile(join(folder, 'cultivars.yaml'), '[]\n');
  await writeFile(join(trial, 'trial.yaml'), growingYaml);
  await writeFile(join(trial, 'layout.csv'), growingLayout);
}
