import type { Trial, TrialMetadata } from '../model/trial.ts';

type Crop = TrialMetadata['crop'];

/**
 * Trials of other sites with their species written as the site itself writes it, so that one species is one: known
 * by its number in the NCBI taxonomy, or by the same name but for case, spaces and the name's author.
 *
 * @param own the site's own trials, whose way of writing stands; after them the first that wrote a species
 */
export function withCropsAsHere(gathered: readonly Trial[], own: readonly Trial[]): Trial[] {
  const names = new Map<string, string>();
  const keep = ({ species, taxon }: Crop): void => {
    if (species === undefined) return;
    for (const key of [taxon, plainSpecies(species)]) {
      if (key !== undefined && !names.has(key)) names.set(key, species);
    }
  };
  for (const { metadata } of own) keep(metadata.crop);
  return gathered.map((trial) => {
    const { crop } = trial.metadata;
    const here =
      (crop.taxon === undefined ? undefined : names.get(crop.taxon)) ??
      (crop.species === undefined ? undefined : names.get(plainSpecies(crop.species)));
    keep(crop);
    if (here === undefined || here === crop.species) return trial;
    return { ...trial, metadata: { ...trial.metadata, crop: { ...crop, species: here } } };
  });
}

/**
 * A scientific name without its author, in lower case. Names below the species (var., subsp., f.) stay whole but
 * for authors between.
 *
 * @example plainSpecies('Lactuca  sativa L.') // "lactuca sativa"
 */
export function plainSpecies(name: string): string {
  const [genus = '', ...words] = name.normalize('NFKC').trim().split(/\s+/);
  // An author's name begins with a capital or a bracket; the words of a name do not, but for one all in capitals.
  const ofName = /^(?:[a-z×-]+|var\.|subsp\.|ssp\.|f\.)$/;
  const kept = words.filter(
    (word, at) => (at === 0 && /^[\p{L}×-]+$/u.test(word)) || (ofName.test(word) && word !== 'ex'),
  );
  return [genus, ...kept].join(' ').toLowerCase();
}
