import { expect, test } from 'vitest';
import { topics } from '../../../src/compute/cautions/caution.ts';
import { allCautions, cautionsAbout, cautionsOf } from '../../../src/compute/cautions/cautions-of.ts';
import { topicsOf, topicsOfRecipe } from '../../../src/compute/cautions/topics-of.ts';
import type { Container, TrialMetadata } from '../../../src/model/trial.ts';
import { languages } from '../../../src/model/language.ts';
import messages from '../../../src/model/messages.json' with { type: 'json' };
import { blockTrial } from '../../support/example-trial.ts';

const { metadata } = blockTrial();
const ids = (extra: Partial<TrialMetadata>): string[] =>
  cautionsOf({ metadata: { ...metadata, ...extra } }).map(({ id }) => id);
const nutrients: TrialMetadata['nutrients'] = {
  salts: [
    { name: 'Calcium nitrate', grams_per_litre: 0.66, percent: { N: 15.5, Ca: 19 }, stock: 'A' },
    { name: 'Magnesium sulfate', grams_per_litre: 0.4, formula: 'MgSO4.7H2O', stock: 'B' },
  ],
  stock_ratio: 100,
};

test('every caution has a topic that something calls for, defers to somebody and names its source', () => {
  expect(new Set(allCautions.map(({ id }) => id)).size).toBe(allCautions.length);
  for (const { id, topic, text, defers, source } of allCautions) {
    expect(topics, id).toContain(topic);
    expect(text.length, id).toBeGreaterThan(60);
    expect(defers, id).toMatch(/first|ask|check|local|licensed|sold to licensed/i);
    expect(source, id).toMatch(/no source|common practice|memory|regulation|convention/i);
  }
});

test('every caution is there in every language', () => {
  const known: Readonly<Record<string, Readonly<Record<string, string>> | undefined>> = messages;
  const texts = allCautions.flatMap(({ heading, text, defers, source }) => [heading, text, defers, source]);
  const others = languages.filter((each) => each !== 'en');
  expect(texts.filter((text) => others.some((other) => !known[text]?.[other]))).toEqual([]);
});

test('a number of a regulation stands beside the regulation and the word to check it', () => {
  const limits = allCautions.filter(({ id }) => id.startsWith('nitrate-in'));
  expect(limits.length).toBeGreaterThan(2);
  for (const { source, defers } of limits) {
    expect(source).toMatch(/\(EU\) No 1258\/2011.*from memory.*\(EU\) 2023\/915/);
    expect(defers.toLowerCase()).toContain('check the consolidated text');
  }
});

// Commission Regulation (EU) No 1258/2011, annex, points 1.1 to 1.5, mg NO3/kg as printed there.
test('the limits of nitrate are those printed in the regulation', () => {
  const text = (id: string) => allCautions.find((caution) => caution.id === id)!.text.match(/\d{4}/g);
  expect(text('nitrate-in-lettuce')).toEqual(['5000', '4000', '4000', '3000', '2500', '2000']);
  expect(text('nitrate-in-spinach')).toEqual(['3500', '2000']);
  expect(text('nitrate-in-rocket')).toEqual(['7000', '6000']);
});

test('a tank of lettuce without a recipe calls for water, food and nitrate, not for salts', () => {
  expect(ids({})).toEqual([
    'open-water',
    'mosquitoes',
    'food',
    'nitrate-in-lettuce',
    'spent-solution',
    'weight-of-water',
    'protected-cultivars',
  ]);
});

test('a recipe with a nitrate in a stock calls for goggles, oxidisers and concentrates', () => {
  expect(ids({ nutrients }).slice(0, 3)).toEqual(['salts', 'oxidisers', 'concentrates']);
  expect(topicsOfRecipe({ salts: [{ name: 'KNO3', formula: 'KNO3', grams_per_litre: 1 }] })).toEqual([
    'salts',
    'nitrate salts',
    'solution',
  ]);
  expect(topicsOfRecipe({ salts: [nutrients.salts![1]!] })).toEqual(['salts', 'stocks', 'solution']);
  expect(topicsOfRecipe({ water: { Ca: 20 } })).toEqual([]);
});

test('an acid calls for its caution by its name or its formula', () => {
  const acid = (name: string, formula?: string) =>
    topicsOfRecipe({ salts: [{ name, grams_per_litre: 0.1, ...(formula ? { formula } : {}) }] });
  expect(acid('Phosphoric acid')).toContain('acids and alkalis');
  expect(acid('pH down', 'H3PO4')).toContain('acids and alkalis');
  expect(acid('Boric acid', 'H3BO3')).not.toContain('acids and alkalis');
});

test('a bed of soil calls for no caution of water, a greenhouse for one of electricity', () => {
  const bed: Container = { ...metadata.containers[0], kind: 'bed' };
  expect(ids({ containers: [bed] })).not.toContain('mosquitoes');
  expect(ids({ site: { name: 'Here', setting: 'greenhouse' } })).toContain('electricity');
  expect(topicsOf({ metadata })).not.toContain('under a roof');
});

test('a regulated plant is told by its species, or by its name where no species is given, and no other is', () => {
  expect(ids({ crop: { name: 'Kangkong', species: 'Ipomoea aquatica' } })).toContain('water-spinach');
  expect(ids({ crop: { name: 'Water spinach' } })).toContain('water-spinach');
  expect(ids({ crop: { name: 'Water spinach' } })).not.toContain('nitrate-in-spinach');
  expect(ids({ crop: { name: 'Sweet potato', species: 'Ipomoea batatas' } })).not.toContain('water-spinach');
  expect(cautionsAbout(['plants'])).toEqual([]);
});
