/** Writes a content folder whose trials share many cultivars, for measuring how they are compared. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { aboutNormal, seeded, shuffled } from './trial-folders.ts';

const BLOCKS = 2;
const COLUMNS = 5;

const nameOf = (at: number) => `cultivar-${String(at + 1).padStart(3, '0')}`;

/** So many trials of the same cultivars, each in two blocks of one plant of every cultivar. */
export async function writeSeasonFolders(
  content: string,
  { trials, cultivars, seed }: { trials: number; cultivars: number; seed: number },
): Promise<void> {
  await mkdir(content, { recursive: true });
  const names = Array.from({ length: cultivars }, (_, at) => nameOf(at));
  await writeFile(join(content, 'site.yaml'), site);
  await writeFile(
    join(content, 'cultivars.yaml'),
    names.map((id) => `- {id: ${id}, name: ${id}, species: Lactuca sativa}\n`).join(''),
  );
  for (let at = 1; at <= trials; at += 1) {
    const folder = join(content, 'trials', `season-${String(at).padStart(3, '0')}`);
    await mkdir(folder, { recursive: true });
    const random = seeded(seed + at);
    const season = 15 * aboutNormal(random);
    const layout = ['container,row,column,cultivar'];
    const harvest = ['container,row,column,fresh_weight'];
    for (let block = 1; block <= BLOCKS; block += 1) {
      for (const [place, cultivar] of shuffled(names, random).entries()) {
        const where = `T${block},${1 + Math.floor(place / COLUMNS)},${1 + (place % COLUMNS)}`;
        const mean = 150 + season + names.indexOf(cultivar) / 2;
        layout.push(`${where},${cultivar}`);
        harvest.push(`${where},${Math.max(20, Math.round(mean + 14 * aboutNormal(random)))}`);
      }
    }
    await writeFile(join(folder, 'layout.csv'), `${layout.join('\n')}\n`);
    await writeFile(join(folder, 'harvest.csv'), `${harvest.join('\n')}\n`);
    await writeFile(join(folder, 'trial.yaml'), trialYaml(at, names));
  }
}

const site = `title: Generated seasons
url: https://seasons.example.org/
publisher: Nobody
licence: CC0-1.0
language: en
units: metric
`;

function trialYaml(at: number, names: readonly string[]): string {
  const year = 1990 + (at % 30);
  const setting = ['open air', 'rain shelter', 'greenhouse'][at % 3]!;
  const containers = Array.from(
    { length: BLOCKS },
    (_, block) =>
      `  - {id: T${block + 1}, kind: tank, rows: ${Math.ceil(names.length / COLUMNS)}, columns: ${COLUMNS}, block: "${block + 1}", cover: {length: 300, width: 150, unit: cm}}\n`,
  );
  return `title: Generated season ${at}
version: 1.0.0
status: finished
question: Which of the cultivars gives the heaviest head?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: ${year}, name: ${at % 2 === 0 ? 'spring' : 'autumn'}}
dates: {sown: ${year}-03-01, transplanted: ${year}-03-22, cuts: [${year}-05-03]}
site: {name: Generated, country: IE, setting: ${setting}}
people: [{name: Nobody, part: grower}]
licence: CC0-1.0
factors:
  - id: cultivar
    name: Cultivar
    kind: cultivar
    levels: [${names.map((id) => `{id: ${id}}`).join(', ')}]
    check: ${names[0]!}
design: {arrangement: randomised blocks, allotted: position, randomised: true}
containers:
${containers.join('')}variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g, resolution: 1}
releases: [{version: 1.0.0, date: ${year}-06-01, note: First release.}]
`;
}
