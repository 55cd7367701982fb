import indexSchema from '../../schemas/index.schema.json' with { type: 'json' };
import type { Library } from '../model/library.ts';
import { allWeightsTable } from './all-weights-table.ts';
import { csvText } from './csv.ts';
import { finished } from './dataset.ts';
import { datasetIndex } from './dataset-index.ts';
import { jsonFile, textFile, type PublishedFile } from './published-file.ts';

/** The files across trials, each named by its path from the site's root on. */
export function siteFiles(library: Library): PublishedFile[] {
  const trials = library.trials.flatMap((item) => finished(item)?.trial ?? []);
  return [
    textFile(
      'data/all-weights.csv',
      'text/csv',
      'The weights of every trial in one table, in g, with the trial before each row.',
      csvText(allWeightsTable(trials)),
    ),
    jsonFile(
      'data/index.json',
      'application/json',
      'Every dataset of the site with its files, for programs.',
      datasetIndex(library),
    ),
    jsonFile(
      'data/index.schema.json',
      'application/schema+json',
      'What the keys of index.json mean.',
      indexSchema,
    ),
  ];
}
