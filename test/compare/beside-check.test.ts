import { describe, expect, test } from 'vitest';
import { besideCheck } from '../../src/compare/beside-check.ts';
import { listedCultivars } from '../../src/compare/cultivars-list.ts';
import { seasons } from '../../src/compare/seasons.ts';
import { triedCultivars } from '../../src/compare/tried-cultivars.ts';
import { cultivarSentence } from '../../src/compare/words/cultivar-sentence.ts';
import { plainText } from '../../src/compute/words/words.ts';
import type { Seasons } from '../../src/model/generated/seasons.ts';
import { barley, type BarleyCell, trialsOf } from './barley-trials.ts';

const name = (cultivar: string) => cultivar;
const perPot = (cells: readonly BarleyCell[], check?: string): Seasons =>
  seasons(trialsOf(cells, check)).find(({ measure }) => measure === 'per_pot')!;
const said = (entry: Seasons, cultivar: string) =>
  plainText(cultivarSentence(entry, cultivar, name)!)
    .replaceAll('\u00A0', ' ')
    .replaceAll('\u2212', '-');

/** Varieties of 1931 beside others of 1932: two linked sets. */
const parted = barley.filter(({ variety, trial }) =>
  (trial.endsWith('1931') ? ['Trebi', 'Velvet'] : ['Glabron', 'Peatland']).includes(variety),
);

describe('a cultivar beside the check', () => {
  // R's TukeyHSD (cultivars-by-trials-barley.json of the check values): Velvet less Trebi is -6.339, p 0.0326.
  test('is told apart or not by the adjusted p, the sign and the limits being its own', () => {
    const entry = perPot(barley, 'Trebi');
    const velvet = besideCheck(entry, 'Velvet');
    expect(velvet).toMatchObject({ kind: 'less' });
    if (!('estimate' in velvet)) throw new Error('no estimate');
    expect(velvet.estimate).toBeCloseTo(33.06110916666667 - 39.399993333333335, 9);
    expect(velvet.lower).toBeLessThan(velvet.estimate);
    expect(velvet.upper).toBeLessThan(0);
    expect(velvet.percent).toBeCloseTo((100 * 33.06110916666667) / 39.399993333333335, 9);
    expect(besideCheck(perPot(barley, 'Velvet'), 'Trebi').kind).toBe('more');
    expect(besideCheck(entry, 'Peatland').kind).toBe('not told apart');
    expect(besideCheck(entry, 'Trebi').kind).toBe('the check');
  });

  test('of another linked set, of no check, or of one trial is not compared', () => {
    expect(besideCheck(perPot(parted, 'Trebi'), 'Glabron').kind).toBe('not linked');
    expect(besideCheck(perPot(barley), 'Glabron').kind).toBe('no check');
    const one = barley.filter(({ trial }) => trial === 'Waseca 1931');
    expect(besideCheck(perPot(one, 'Trebi'), 'Velvet').kind).toBe('not compared');
  });
});

describe('the sentence on a cultivar', () => {
  test('says the difference from the check, its interval, and whether it is told apart', () => {
    const entry = perPot(barley, 'Trebi');
    expect(said(entry, 'Velvet')).toBe(
      'Over 12 trials Velvet gave 6.3 g a pot less than the check Trebi (95% interval 0.3 g to 12.4 g).',
    );
    expect(said(entry, 'Wisconsin No. 38')).toMatch(/, not enough to tell them apart\.$/);
  });

  test('says of the check whom it is held against', () => {
    expect(said(perPot(parted, 'Trebi'), 'Trebi')).toMatch(/It is the check that Velvet is held against\.$/);
  });

  test('refuses what no trial links with the check, and what stood alone', () => {
    expect(said(perPot(parted, 'Trebi'), 'Glabron')).toContain(
      'No chain of shared trials links it with the check Trebi; it stood beside Peatland.',
    );
    const alone = barley.filter(({ variety, trial }) => variety === 'Trebi' || trial === 'Duluth 1931');
    const single = alone.filter(({ variety, trial }) =>
      trial === 'Duluth 1931' ? variety === 'Velvet' : trial === 'Waseca 1931',
    );
    expect(said(perPot(single), 'Velvet')).toBe(
      'In its one trial (autumn 2025) Velvet gave 30 g a pot. No other cultivar stood beside it in any trial, so it is compared with none.'.replace(
        '30',
        String(
          Math.round(
            barley.find((cell) => cell.trial === 'Duluth 1931' && cell.variety === 'Velvet')!.y * 10,
          ) / 10,
        ),
      ),
    );
  });

  test('is none where the comparison has no mean of the cultivar', () => {
    expect(cultivarSentence(perPot(barley), 'another', name)).toBeNull();
  });
});

test('a trial that grew a cultivar alone is not counted among those that tell a difference', () => {
  const some = barley.filter(
    ({ trial, variety }) => ['Trebi', 'Velvet', 'Glabron'].includes(variety) && /Waseca|Duluth/.test(trial),
  );
  const alone = barley.filter(({ trial, variety }) => variety === 'Trebi' && /Morris 1931/.test(trial));
  const said = plainText(cultivarSentence(perPot([...some, ...alone], 'Velvet'), 'Trebi', name)!);
  expect(new Set(some.map(({ trial }) => trial)).size).toBe(4);
  expect(said).toMatch(/^Over 4 trials Trebi gave .* more than the check Velvet/);
});

describe('the list of cultivars', () => {
  const trials = trialsOf(barley, 'Trebi');
  const listed = listedCultivars(
    triedCultivars(trials, [{ id: 'unsown', name: 'Unsown', species: 'Hordeum vulgare' }]),
    () => ({ crop: 'Barley', entry: perPot(barley, 'Trebi') }),
  );

  test('has every cultivar by name, with its trials and how it stood beside the check', () => {
    expect(listed.map((each) => each.name)).toEqual([...listed.map((each) => each.name)].sort());
    expect(listed).toHaveLength(11);
    const of = (wanted: string) => listed.find((each) => each.name === wanted)!;
    expect(of('Trebi')).toMatchObject({ trials: 12, besideCheck: 'the check', percent: 100, crop: 'Barley' });
    expect(of('Velvet').besideCheck).toBe('84%, less');
    expect(of('Unsown')).toMatchObject({ trials: 0, seasons: 'not yet grown', percent: -1 });
  });

  test('counts no planned trial among those that grew a cultivar, and orders numbers by size', () => {
    const numbered = trials.map((item) => structuredClone(item));
    for (const { trial } of numbered.slice(1)) trial.metadata.status = 'planned';
    const names = ['Line 10', 'Line 2', 'Line 1'].map((text) => ({
      id: text.replace('Line ', 'line-'),
      name: text,
    }));
    const few = listedCultivars(triedCultivars(numbered, names), () => null);
    expect(few.find((each) => each.name === 'Trebi')).toMatchObject({
      trials: 1,
      seasons: `${numbered[0]!.trial.metadata.season.name} ${String(numbered[0]!.trial.metadata.season.year)}`,
    });
    expect(few.map((each) => each.name).filter((each) => each.startsWith('Line'))).toEqual([
      'Line 1',
      'Line 2',
      'Line 10',
    ]);
  });

  test('gives each an address of its own, of letters, digits and hyphens', () => {
    const ids = listed.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('wisconsin-no-38');
    for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });
});
