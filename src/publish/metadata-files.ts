import type { Trial } from '../model/trial.ts';
import { citationBiblatex } from './citation-biblatex.ts';
import { citationCff } from './citation-cff.ts';
import { citationCsl } from './citation-csl.ts';
import { citationRis } from './citation-ris.ts';
import type { CsvResource } from './csv-resources.ts';
import { csvwMetadata } from './csvw.ts';
import { dataPackage } from './data-package.ts';
import { datacite } from './datacite.ts';
import type { Dataset } from './dataset.ts';
import { miappe, miappeTsv } from './miappe.ts';
import { describedAs, jsonFile, textFile, type PublishedFile } from './published-file.ts';

function citations(set: Dataset): PublishedFile[] {
  return [
    textFile(
      'CITATION.cff',
      'application/yaml',
      'How to cite the dataset, for code hosts and archives (Citation File Format 1.2.0).',
      citationCff(set),
    ),
    textFile(
      'citation.bib',
      'application/x-bibtex',
      'How to cite the dataset, for LaTeX (BibLaTeX).',
      citationBiblatex(set),
    ),
    textFile(
      'citation.ris',
      'application/x-research-info-systems',
      'How to cite the dataset, for reference managers (RIS).',
      citationRis(set),
    ),
    jsonFile(
      'csl.json',
      'application/vnd.citationstyles.csl+json',
      'How to cite the dataset, for programs that format citations (CSL-JSON).',
      citationCsl(set),
    ),
    jsonFile(
      'datacite.json',
      'application/vnd.datacite.datacite+json',
      'What a registrar needs to give the dataset a DOI (DataCite 4.5).',
      datacite(set),
    ),
  ];
}

/** The metadata of a dataset's tables, and its citations. */
export function metadataFiles(
  set: Dataset,
  trial: Trial,
  resources: readonly CsvResource[],
): PublishedFile[] {
  const about = { ...set, creators: set.creators.map((person) => person.name.full) };
  const sections = miappe(
    set,
    trial,
    resources.map((csv) => csv.file),
  );
  return [
    jsonFile(
      'datapackage.json',
      'application/json',
      'Every table with its columns, types, units and checksum, for programs (Data Package 2.0).',
      dataPackage(set, resources),
    ),
    ...resources.map((csv) => columnsFile(csv.file.name, csvwMetadata(about, csv.file.name, csv))),
    jsonFile(
      'miappe.json',
      'application/json',
      'The trial under the headings that plant scientists ask for (MIAPPE 1.2).',
      sections,
    ),
    textFile(
      'miappe.tsv',
      'text/tab-separated-values',
      'The same as miappe.json, a line for each value.',
      miappeTsv(sections),
    ),
    ...citations(set),
  ];
}

function columnsFile(table: string, metadata: unknown): PublishedFile {
  const described = describedAs('What the columns of {file} hold, for programs (CSV on the Web).', {
    file: table,
  });
  const file = jsonFile(`${table}-metadata.json`, 'application/csvm+json', described.description, metadata);
  return { ...file, ...described };
}
