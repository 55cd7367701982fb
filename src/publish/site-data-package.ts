import type { Library } from '../model/library.ts';
import { address, siteAddress } from './addresses.ts';
import type { CsvResource } from './csv-resources.ts';
import { tableResource } from './data-package.ts';
import { dataset, finished } from './dataset.ts';
import { licence } from './licence.ts';

/**
 * data/datapackage.json: the table across trials as a data package. Its sources are the trials' own
 * packages, which hold the terms of each.
 */
export function siteDataPackage(library: Library, allWeights: Omit<CsvResource, 'name'>): object {
  const { site } = library;
  const terms = licence(site.licence);
  const sets = library.trials.filter((item) => finished(item) !== null).map((item) => dataset(item, library));
  const inOrder = [...sets].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: 'weights-of-all-trials',
    id: address(site, 'data/'),
    title: `Weights of all trials: ${site.title}`,
    ...(site.description === undefined ? {} : { description: site.description }),
    homepage: siteAddress(site),
    licenses: [{ name: terms.id, title: terms.name, path: terms.address }],
    contributors: [{ title: site.publisher, roles: ['publisher'] }],
    sources: inOrder.map((set) => ({
      title: set.title,
      path: `${set.dataPage}datapackage.json`,
      version: set.version,
    })),
    resources: [tableResource({ ...allWeights, name: 'all-weights' }, 'all-weights.csv')],
  };
}
