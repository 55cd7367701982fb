/** Writes content folders of any number of generated trials, for measuring how the build grows. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

const cultivars = ['amber-finch', 'birch-martin', 'cedar-linnet', 'dusk-pipit', 'elder-siskin'];
const BLOCKS = 4;
const PLANTS = 5;

/** Numbers in [0, 1), always the same for the same seed: Marsaglia's xorshift on 32 bits (2003), 13-17-5. */
export function seeded(seed: number): () => number {
  let state = (Math.imul(seed + 1, 0x9e3779b1) | 0) === 0 ? 1 : Math.imul(seed + 1, 0x9e3779b1) | 0;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/** About normal: the sum of twelve uniform numbers, less their mean, has a standard deviation of 1. */
export function aboutNormal(random: () => number): number {
  return Array.from({ length: 12 }, random).reduce((sum, value) => sum + value, -6);
}

export function shuffled<T>(values: readonly T[], random: () => number): T[] {
  const order = values.map((value) => ({ value, key: random() }));
  return order.sort((a, b) => a.key - b.key).map(({ value }) => value);
}

/**
 * A content folder of `count` trials, each of 4 blocks (a tank each) x 5 cultivars x 5 plants in a row:
 * 100 plants, all weighed, with effects of cultivar, plot and plant.
 * @returns how many plants there are in all
 */
export async function writeTrialFolders(content: string, count: number, seed: number): Promise<number> {
  await mkdir(content, { recursive: true });
  await writeFile(join(content, 'site.yaml'), site);
  await writeFile(join(content, 'cultivars.yaml'), cultivars.map(cultivarEntry).join(''));
  for (let at = 1; at <= count; at++) {
    const folder = join(content, 'trials', `generated-${String(at).padStart(4, '0')}`);
    await mkdir(folder, { recursive: true });
    const { layout, harvest } = tables(seeded(seed + at));
    await writeFile(join(folder, 'trial.yaml'), trialYaml(at));
    await writeFile(join(folder, 'layout.csv'), layout);
    await writeFile(join(folder, 'harvest.csv'), harvest);
  }
  return count * BLOCKS * cultivars.length * PLANTS;
}

function tables(random: () => number): { layout: string; harvest: string } {
  const layout = ['container,row,column,cultivar,plot'];
  const harvest = ['container,row,column,fresh_weight'];
  for (let block = 1; block <= BLOCKS; block++) {
    const blockEffect = 6 * aboutNormal(random);
    for (const [index, cultivar] of shuffled(cultivars, random).entries()) {
      const mean = 130 + 8 * cultivars.indexOf(cultivar) + blockEffect + 9 * aboutNormal(random);
      for (let column = 1; column <= PLANTS; column++) {
        const weight = Math.min(400, Math.max(30, Math.round(mean + 18 * aboutNormal(random))));
        layout.push(`T${block},${index + 1},${column},${cultivar},T${block}-${index + 1}`);
        harvest.push(`T${block},${index + 1},${column},${weight}`);
      }
    }
  }
  return { layout: `${layout.join('\n')}\n`, harvest: `${harvest.join('\n')}\n` };
}

const site = `title: Generated trials
url: https://trials.example.org/
publisher: Nobody
licence: CC0-1.0
language: en
units: metric
`;

function cultivarEntry(id: string): string {
  const name = id.replace(/(^|-)(.)/g, (_, dash: string, letter: string) => {
    return `${dash === '' ? '' : ' '}${letter.toUpperCase()}`;
  });
  return `- {id: ${id}, name: ${name}, species: Lactuca sativa, synonyms: [], note: Generated.}\n`;
}

function trialYaml(at: number): string {
  const year = 2001 + (at % 24);
  const containers = Array.from({ length: BLOCKS }, (_, i) => {
    return `  - {id: T${i + 1}, kind: tank, rows: ${cultivars.length}, columns: ${PLANTS}, row_1: wall side, column_1: north, block: "${i + 1}", cover: {length: 150, width: 120, unit: cm}}\n`;
  });
  return `title: Generated trial ${at}
version: 1.0.0
status: finished
question: Which of five cultivars gives the heaviest head?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: ${year}, name: spring}
dates: {sown: ${year}-03-01, transplanted: ${year}-03-22, cuts: [${year}-05-03]}
site: {name: Generated, country: IE, region: west coast, setting: rain shelter}
people: [{name: Nobody, part: grower}]
licence: CC0-1.0
factors:
  - id: cultivar
    name: Cultivar
    kind: cultivar
    levels: [${cultivars.map((id) => `{id: ${id}}`).join(', ')}]
    check: ${cultivars[0]}
design: {arrangement: randomised blocks, allotted: plot, randomised: true, seed: ${at}}
containers:
${containers.join('')}variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g, resolution: 1, lowest: 20, highest: 500}
releases: [{version: 1.0.0, date: ${year}-06-01, note: First release.}]
`;
}
