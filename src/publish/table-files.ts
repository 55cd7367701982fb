import type { Trial } from '../model/trial.ts';
import { csvText, type Table } from './csv.ts';
import { csvResources, type CsvResource } from './csv-resources.ts';
import type { Dataset, FinishedTrial } from './dataset.ts';
import { dictionaryTable } from './dictionary-table.ts';
import { layoutTable } from './layout-table.ts';
import { parquetFile } from './parquet.ts';
import { textFile, type PublishedFile } from './published-file.ts';
import { spreadsheet } from './spreadsheet.ts';
import { summaryTable } from './summary-table.ts';
import { weightsTable } from './weights-table.ts';

const csv = 'text/csv';

/** The trial folder's own CSV files, byte for byte as given. */
const given: Record<string, string> = {
  'harvest.csv': 'The weights as the grower wrote them down, byte for byte.',
  'layout.csv': 'What was planted where, as the grower wrote it down, byte for byte.',
  'readings.csv': 'Readings of the water and the solution, as the grower wrote them down, byte for byte.',
};

function givenTables(trial: Trial): PublishedFile[] {
  return Object.entries(given).flatMap(([name, description]) => {
    const bytes = trial.files.get(name);
    return bytes === undefined ? [] : [{ name, bytes, mediaType: csv, description }];
  });
}

/** The tidy tables as CSV. */
function tidyTables(weights: Table, summary: Table): PublishedFile[] {
  return [
    textFile(
      'weights.csv',
      csv,
      'The weights to work with: the harvest joined with the layout, in g.',
      csvText(weights),
    ),
    textFile(
      'summary.csv',
      csv,
      'Means, spreads and counts of each treatment, as the page shows them but to full precision.',
      csvText(summary),
    ),
  ];
}

function spreadsheetFile(set: Dataset, trial: Trial, weights: Table, summary: Table): PublishedFile {
  const sheets = [
    { name: 'weights', table: weights },
    { name: 'layout', table: layoutTable(trial) },
    { name: 'summary', table: summary },
    { name: 'dictionary', table: dictionaryTable(trial.metadata, ['weights', 'layout', 'summary']) },
  ];
  const creator = set.creators.map((person) => person.name.full).join(', ');
  return {
    name: `${set.id}.xlsx`,
    bytes: spreadsheet(sheets, { title: set.title, creator, day: set.released }),
    mediaType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    description: 'Weights, layout, summary and what their columns mean, for a spreadsheet.',
  };
}

/** The tables of a dataset: all files, and its CSV files with what their columns hold. */
export function tableFiles(
  set: Dataset,
  { trial, findings }: FinishedTrial,
): { files: PublishedFile[]; resources: CsvResource[] } {
  const weights = weightsTable(trial);
  const summary = summaryTable(trial, findings);
  const tables = [...tidyTables(weights, summary), ...givenTables(trial)];
  const resources = csvResources(trial, tables);
  const weightsParquet = resources
    .filter((resource) => resource.name === 'weights')
    .flatMap((resource) =>
      parquetFile(
        'weights.parquet',
        'The same as weights.csv, for query engines (Parquet).',
        weights,
        resource,
      ),
    );
  return { files: [...tables, spreadsheetFile(set, trial, weights, summary), ...weightsParquet], resources };
}
