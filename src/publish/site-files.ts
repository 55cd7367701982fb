import comparisonSchema from '../../schemas/comparison.schema.json' with { type: 'json' };
import seasonsSchema from '../../schemas/seasons.schema.json' with { type: 'json' };
import indexSchema from '../../schemas/index.schema.json' with { type: 'json' };
import type { Library } from '../model/library.ts';
import { address } from './addresses.ts';
import { allWeightsResource } from './all-weights-resource.ts';
import { allWeightsTable } from './all-weights-table.ts';
import { catalog } from './catalog.ts';
import { allSeasons } from './crop-comparisons.ts';
import { comparisonFiles } from './comparison-files.ts';
import { csvText } from './csv.ts';
import { csvwMetadata } from './csvw.ts';
import { dataset, finished } from './dataset.ts';
import { cultivarsFile, datasetIndex } from './dataset-index.ts';
import { exampleFolder } from './example-folder.ts';
import { feed } from './feed.ts';
import { licence } from './licence.ts';
import { madeOnce } from './made-once.ts';
import { pagesOnly } from './pages-only.ts';
import { parquetFile } from './parquet.ts';
import { jsonFile, textFile, type PublishedFile } from './published-file.ts';
import { siteDataPackage } from './site-data-package.ts';
import { sitemap } from './sitemap.ts';
import { weighTrials } from './weigh-trials.ts';

/** The table across trials, with what its columns hold. */
function allWeights(library: Library): PublishedFile[] {
  const { site } = library;
  const items = library.trials.filter((item) => finished(item) !== null);
  const trials = items.map((item) => item.trial);
  const table = allWeightsTable(trials);
  const file = textFile(
    'data/all-weights.csv',
    'text/csv',
    'The weights of every trial in one table, in g, with the trial before each row.',
    csvText(table),
  );
  const resource = allWeightsResource(trials, table.columns, file);
  const released = items
    .map((item) => dataset(item, library).released)
    .sort()
    .at(-1);
  const about = {
    title: site.title,
    language: site.language ?? 'en',
    licence: licence(site.licence),
    publisher: site.publisher,
    creators: [],
    ...(released === undefined ? {} : { released }),
  };
  return [
    file,
    ...parquetFile(
      'data/all-weights.parquet',
      'The same as all-weights.csv, for query engines (Parquet).',
      table,
      resource,
    ),
    jsonFile(
      'data/all-weights.csv-metadata.json',
      'application/csvm+json',
      'What the columns of all-weights.csv hold, for programs (CSV on the Web).',
      csvwMetadata(about, 'all-weights.csv', resource),
    ),
    jsonFile(
      'data/datapackage.json',
      'application/json',
      'The tables of every trial with their columns and checksums, for programs (Data Package 2.0).',
      siteDataPackage(library, resource),
    ),
  ];
}

/** The files across trials, each named by its path from the site's root on. They are made once for each library. */
export const siteFiles = madeOnce('site-files', (library: Library): PublishedFile[] => {
  return [
    ...(pagesOnly() ? [] : acrossTrials(library)),
    ...exampleFolder(library),
    ...weighTrials(library),
    textFile('feed.xml', 'application/atom+xml', 'Every release, newest first (Atom).', feed(library)),
    textFile('sitemap.xml', 'application/xml', 'Every page, for search engines.', sitemap(library)),
    textFile(
      'robots.txt',
      'text/plain',
      'Every robot is welcome.',
      `User-agent: *\nAllow: /\n\nSitemap: ${address(library.site, 'sitemap.xml')}\n`,
    ),
  ];
});

/** The datasets together: their weights, their index and catalogue, and their comparisons. */
function acrossTrials(library: Library): PublishedFile[] {
  return [
    ...allWeights(library),
    jsonFile(
      'data/index.json',
      'application/json',
      'Every dataset of the site with its files, for programs.',
      datasetIndex(library),
    ),
    cultivarsFile(library),
    jsonFile(
      'data/index.schema.json',
      'application/schema+json',
      'What the keys of index.json mean.',
      indexSchema,
    ),
    jsonFile(
      'data/seasons.json',
      'application/json',
      'Cultivars compared across the seasons of each crop, to full precision.',
      allSeasons(library),
    ),
    jsonFile(
      'data/seasons.schema.json',
      'application/schema+json',
      'What the keys of seasons.json mean.',
      seasonsSchema,
    ),
    ...comparisonFiles(library),
    jsonFile(
      'data/comparison.schema.json',
      'application/schema+json',
      'What the keys of compare/<crop>-<measure>.json mean: what each trial brings to a comparison.',
      comparisonSchema,
    ),
    jsonFile(
      'data/catalog.jsonld',
      'application/ld+json',
      'The catalogue of the datasets, for those who gather them (DCAT 3).',
      catalog(library),
    ),
  ];
}
