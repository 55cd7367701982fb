/**
 * Published data sets as a content folder, made anew by the tests from packages that carry them: the barley
 * trials of 1931 and 1932 from vega-datasets, and OrchardSprays and PlantGrowth from R itself.
 * What each is and where it was published stands in the SOURCE.md files beside this and in the trials' text.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { R } from '../support/webr.ts';

interface BarleyRow {
  yield: number;
  variety: string;
  year: number;
  site: string;
}

/** The barley yields in bushels per acre: 10 varieties, 6 sites, 2 years. */
export async function barleyRows(): Promise<BarleyRow[]> {
  const entry = createRequire(import.meta.url).resolve('vega-datasets');
  const path = join(dirname(entry), '..', 'data', 'barley.json');
  return JSON.parse(await readFile(path, 'utf8')) as BarleyRow[];
}

export interface Spray {
  rowpos: number;
  colpos: number;
  treatment: string;
  decrease: number;
}

/** R's OrchardSprays: an 8 by 8 Latin square (Finney 1947). */
export async function orchardSprays(r: R): Promise<Spray[]> {
  const columns = (await r.run('OrchardSprays')) as Record<keyof Spray, (number | string)[]>;
  return columns.decrease.map((decrease, index) => ({
    rowpos: Number(columns.rowpos[index]),
    colpos: Number(columns.colpos[index]),
    treatment: String(columns.treatment[index]),
    decrease: Number(decrease),
  }));
}

/** A variety's name as an id. */
export const idOf = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** Every file of the content folder by its path. JSON is YAML, so the metadata are written as JSON. */
export async function publishedContent(r: R): Promise<Record<string, string>> {
  const barley = await barleyRows();
  const varieties = [...new Set(barley.map(({ variety }) => variety))];
  const files: Record<string, string> = {
    'site.yaml': yaml({
      title: 'Published trials',
      url: 'https://published.example.org/',
      publisher: 'The tests',
      licence: 'CC0-1.0',
    }),
    'cultivars.yaml': yaml(varieties.map((name) => ({ id: idOf(name), name, species: 'Hordeum vulgare' }))),
  };
  for (const rows of Map.groupBy(barley, ({ site, year }) => `${site} ${year}`).values()) {
    const id = `barley-${idOf(rows[0]!.site)}-${rows[0]!.year}`;
    Object.assign(files, under(`trials/${id}`, barleyTrial(rows)));
  }
  Object.assign(files, under('trials/orchard-sprays', sprayTrial(await orchardSprays(r))));
  return files;
}

const yaml = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

const under = (folder: string, files: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(files).map(([name, text]) => [`${folder}/${name}`, text]));

const csv = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.join(',')}\n`).join('');

function barleyTrial(rows: readonly BarleyRow[]): Record<string, string> {
  const { site, year } = rows[0]!;
  const suspected =
    site === 'Morris' ? " Morris's two years have long been suspected of having been exchanged." : '';
  return {
    'trial.yaml': yaml({
      title: `Ten barleys at ${site} in ${year}`,
      version: '1.0.0',
      status: 'finished',
      question: 'Which of ten barleys yielded most at this station in this year?',
      summary: `Mean yields as published by Immer, Hayes and Powers (1934), Journal of the American Society of Agronomy 26, 403-419; one figure for each variety. The place of the plots in the field and the day of harvest were not published: the order of the rows and the middle of August stand for them.${suspected}`,
      crop: { name: 'Barley', species: 'Hordeum vulgare', taxon: 'NCBITaxon:4513' },
      season: { year, name: 'summer' },
      dates: { cuts: [`${year}-08-15`] },
      site: { name: site, country: 'US', region: 'Minnesota', setting: 'open air' },
      people: [{ name: 'F. R. Immer, H. K. Hayes and L. Powers', part: 'author' }],
      licence: 'CC0-1.0',
      factors: [
        {
          id: 'variety',
          name: 'Variety',
          kind: 'cultivar',
          levels: rows.map(({ variety }) => ({ id: idOf(variety) })),
        },
      ],
      design: { arrangement: 'unreplicated', allotted: 'position', randomised: false },
      containers: [{ id: 'Field', kind: 'bed', rows: 1, columns: rows.length }],
      variables: [
        { id: 'yield', name: 'Yield', of: 'pot', kind: 'measured', unit: '[bu_us]/[acr_us]', lowest: 0, highest: 100 },
      ],
      releases: [{ version: '1.0.0', date: '2025-01-01', note: 'As published in 1934.' }],
    }),
    'layout.csv': csv([
      ['container', 'row', 'column', 'variety'],
      ...rows.map(({ variety }, index) => ['Field', 1, index + 1, idOf(variety)]),
    ]),
    'harvest.csv': csv([
      ['container', 'row', 'column', 'yield'],
      ...rows.map((row, index) => ['Field', 1, index + 1, row.yield]),
    ]),
  };
}

function sprayTrial(rows: readonly Spray[]): Record<string, string> {
  return {
    'trial.yaml': yaml({
      title: 'Eight sprays against honeybees in an orchard',
      version: '1.0.0',
      status: 'finished',
      question: 'How do eight concentrations of lime sulphur repel honeybees from a sugar solution?',
      summary:
        "The data set OrchardSprays of R, from D. J. Finney (1947), Probit Analysis, Cambridge: sugar solution taken up by bees in two hours from cells of an 8 by 8 Latin square, spray A the strongest and H none. The unit is as published there; the day was not published, and a day of 1946 stands for it.",
      crop: { name: 'Sugar solution' },
      season: { year: 1946, name: 'summer' },
      dates: { cuts: ['1946-07-01'] },
      site: { name: 'An orchard', setting: 'open air' },
      people: [{ name: 'D. J. Finney', part: 'author' }],
      licence: 'CC0-1.0',
      factors: [{ id: 'spray', name: 'Spray', levels: [...'ABCDEFGH'].map((id) => ({ id })), check: 'H' }],
      design: { arrangement: 'latin square', allotted: 'position', randomised: true },
      containers: [{ id: 'Orchard', kind: 'bed', rows: 8, columns: 8 }],
      variables: [
        { id: 'decrease', name: 'Decrease', of: 'pot', kind: 'measured', unit: '1', resolution: 1, lowest: 0, highest: 200 },
      ],
      releases: [{ version: '1.0.0', date: '2025-01-01', note: 'As R has it.' }],
    }),
    'layout.csv': csv([
      ['container', 'row', 'column', 'spray'],
      ...rows.map(({ rowpos, colpos, treatment }) => ['Orchard', rowpos, colpos, treatment]),
    ]),
    'harvest.csv': csv([
      ['container', 'row', 'column', 'decrease'],
      ...rows.map(({ rowpos, colpos, decrease }) => ['Orchard', rowpos, colpos, decrease]),
    ]),
  };
}
