import { expect, test } from 'vitest';
import { levelNames, treatmentName } from '../../../src/compute/format/level-names.ts';
import { trialOf } from '../../support/trial-of.ts';

const trial = trialOf(
  ['plain', 'arabic', '0.5'].map((sort) => ({ container: 'T1', treatment: { sort }, weight: 100 })),
);
trial.metadata.factors = [
  {
    id: 'sort',
    name: 'Sort',
    levels: [{ id: 'plain', name: 'early Étoile' }, { id: 'arabic', name: 'خس الربيع' }, { id: '0.5' }],
  },
];
const named = (sort: string) => treatmentName(trial, { sort }, levelNames(trial));

test('a name stands as it is, begins large, and a number carries its factor', () => {
  expect(named('plain')).toBe('Early Étoile');
  expect(named('0.5')).toBe('Sort 0.5');
});

test('a name written from right to left is kept apart, so that the weight behind it stays behind it', () => {
  expect(named('arabic')).toBe('\u2068خس الربيع\u2069');
});
