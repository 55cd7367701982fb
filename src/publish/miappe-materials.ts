import type { TrialMetadata } from '../model/trial.ts';
import type { Dataset } from './dataset.ts';
import { given, lacking, type MiappeRecord } from './miappe-record.ts';

/** What was grown: each cultivar of the trial, or the crop where no cultivar is named. */
export function miappeMaterials(set: Dataset, metadata: TrialMetadata): MiappeRecord[] {
  const cultivars = (metadata.factors ?? []).filter((factor) => factor.kind === 'cultivar');
  const [genus, ...species] = (metadata.crop.species ?? '').split(' ');
  const one = (id: string, name: string | undefined): MiappeRecord => ({
    biologicalMaterialId: `${set.id}:${id}`,
    organism: set.taxon?.id ?? lacking,
    ...given('genus', genus),
    ...given('species', species.join(' ')),
    ...given('infraspecificName', name),
  });
  const levels = cultivars.flatMap((factor) =>
    factor.levels.map((level) => one(level.id, `cultivar:${level.name ?? level.id}`)),
  );
  if (levels.length > 0) return levels;
  const { cultivar, name } = metadata.crop;
  return [one(cultivar ?? name, cultivar === undefined ? undefined : `cultivar:${cultivar}`)];
}
