import type { Dataset } from './dataset.ts';

/** csl.json: the dataset as one item of CSL-JSON. */
export function citationCsl(set: Dataset): object[] {
  const issued = set.released.split('-').map(Number);
  return [
    {
      id: set.id,
      type: 'dataset',
      title: set.title,
      author: set.creators.map(({ name }) =>
        name.given === null ? { literal: name.full } : { family: name.family, given: name.given },
      ),
      issued: { 'date-parts': [issued] },
      version: set.version,
      publisher: set.publisher,
      ...(set.doi === null ? {} : { DOI: set.doi }),
      URL: set.dataPage,
      abstract: set.description,
      keyword: set.keywords.join(', '),
      language: set.language,
      note: `Licence ${set.licence.id}`,
    },
  ];
}
