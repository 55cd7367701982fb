import { describe, expect, test } from 'vitest';
import { plainSpecies, withCropsAsHere } from '../../src/compare/crop-as-here.ts';
import { full } from '../publish/example.ts';
import type { Trial } from '../../src/model/trial.ts';

const grown = (crop: Trial['metadata']['crop']): Trial => ({
  ...full.trial,
  metadata: { ...full.trial.metadata, crop },
});

test.each([
  ['Lactuca  sativa L.', 'lactuca sativa'],
  ['lactuca sativa', 'lactuca sativa'],
  ['Brassica oleracea var. sabellica L.', 'brassica oleracea var. sabellica'],
  ['Brassica oleracea', 'brassica oleracea'],
  ['Mentha ×piperita', 'mentha ×piperita'],
  ['Beta vulgaris subsp. vulgaris (L.) Thell.', 'beta vulgaris subsp. vulgaris'],
])('the species %s without its author is %s', (written, plain) => {
  expect(plainSpecies(written)).toBe(plain);
});

describe('a trial of another site', () => {
  const own = [grown({ name: 'Lettuce', species: 'Lactuca sativa', taxon: 'NCBITaxon:4236' })];
  const speciesOf = (crop: Trial['metadata']['crop']) =>
    withCropsAsHere([grown(crop)], own)[0]!.metadata.crop.species;

  test('has its species as this site writes it, by name or by taxon', () => {
    expect(speciesOf({ name: 'Salad', species: 'LACTUCA SATIVA L.' })).toBe('Lactuca sativa');
    expect(speciesOf({ name: 'Salad', taxon: 'NCBITaxon:4236' })).toBe('Lactuca sativa');
  });
  test('keeps another species, or none', () => {
    expect(speciesOf({ name: 'Lettuce', species: 'Lactuca serriola' })).toBe('Lactuca serriola');
    expect(speciesOf({ name: 'Lettuce', species: 'Lactuca sativa var. crispa' })).toBe(
      'Lactuca sativa var. crispa',
    );
    expect(speciesOf({ name: 'Lettuce' })).toBeUndefined();
  });
  test('shares a species with a trial of a third site that writes it otherwise', () => {
    const basil = ['Ocimum basilicum', 'ocimum basilicum L.'];
    const crops = withCropsAsHere(
      basil.map((species) => grown({ name: 'Basil', species })),
      own,
    );
    expect(crops.map(({ metadata }) => metadata.crop.species)).toEqual([basil[0], basil[0]]);
  });
});
