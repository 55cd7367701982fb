import type { Library } from '../model/library.ts';
import { address, siteAddress } from './addresses.ts';
import type { CsvResource } from './csv-resources.ts';
import { csvResources } from './csv-resources.ts';
import { tableResource } from './data-package.ts';
import { finished } from './dataset.ts';
import { licence } from './licence.ts';
import { publishedFiles } from './trial-files.ts';

/** data/datapackage.json: the table across trials and each trial's own weights, as one data package. */
export function siteDataPackage(library: Library, allWeights: Omit<CsvResource, 'name'>): object {
  const { site } = library;
  const terms = licence(site.licence);
  const inOrder = [...library.trials].sort((a, b) => (a.trial.id < b.trial.id ? -1 : 1));
  const ofTrials = inOrder.flatMap((item) => {
    const trial = finished(item)?.trial;
    if (trial === undefined) return [];
    return csvResources(trial, publishedFiles(item, library))
      .filter((csv) => csv.name === 'weights')
      .map((csv) =>
        tableResource(
          {
            ...csv,
            name: `weights-${trial.id}`,
            title: `Weights of ${trial.metadata.title}`,
            foreignKeys: [],
          },
          `${trial.id}/weights.csv`,
        ),
      );
  });
  return {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: 'weights-of-all-trials',
    id: address(site, 'data/'),
    title: `Weights of all trials: ${site.title}`,
    ...(site.description === undefined ? {} : { description: site.description }),
    homepage: siteAddress(site),
    licenses: [{ name: terms.id, title: terms.name, path: terms.address }],
    contributors: [{ title: site.publisher, roles: ['publisher'] }],
    resources: [tableResource({ ...allWeights, name: 'all-weights' }, 'all-weights.csv'), ...ofTrials],
  };
}
