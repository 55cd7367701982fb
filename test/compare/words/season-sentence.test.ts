import { describe, expect, test } from 'vitest';
import { seasons } from '../../../src/compare/seasons.ts';
import { restsOnTrials } from '../../../src/compare/words/rests-on-trials.ts';
import { seasonSentence } from '../../../src/compare/words/season-sentence.ts';
import { plainText } from '../../../src/compute/words/words.ts';
import type { Seasons } from '../../../src/model/generated/seasons.ts';
import { barley, type BarleyCell, trialsOf } from '../barley-trials.ts';

const perPot = (cells: readonly BarleyCell[], check?: string): Seasons =>
  seasons(trialsOf(cells, check)).find(({ measure }) => measure === 'per_pot')!;
const name = (cultivar: string) => cultivar;
const said = (entry: Seasons) =>
  plainText(seasonSentence(entry, name)).replaceAll('\u00A0', ' ').replaceAll('\u2212', '-');
const only = (varieties: readonly string[], trials: RegExp) => (cell: BarleyCell) =>
  varieties.includes(cell.variety) && trials.test(cell.trial);

describe('the answer across seasons', () => {
  // By R's TukeyHSD (cultivars-by-trials-barley.json of the check values) Trebi differs from Glabron, Manchuria,
  // No. 475, Svansota and Velvet; from Velvet by 6.339, 0.290 to 12.387.
  test('names the best, how many it is told apart from, and its lead over the check', () => {
    const text = said(perPot(barley, 'Velvet'));
    expect(text).toMatch(/^Trebi gave the most fresh weight per pot, 39\.4 g over the trials, /);
    expect(text).toContain('and can be told apart from 5 of 9 others');
    expect(text).toMatch(/: it led the check, Velvet, by 6\.3 g \(95% interval 0\.3 to 12\.4 g\)\.$/);
  });

  test('holds the best against the next where it is itself the check or there is none', () => {
    for (const check of ['Trebi', undefined]) {
      expect(said(perPot(barley, check))).toMatch(
        /: it led the next, Wisconsin No\. 38, by 0\.01 g \(95% interval -6\.0 to 6\.1 g\)/,
      );
    }
  });

  test('says outright where nothing can be told apart', () => {
    const few = only(['Trebi', 'Wisconsin No. 38'], /./);
    expect(said(perPot(barley.filter(few)))).toContain(
      'but cannot be told apart from Wisconsin No. 38: it led the next, Wisconsin No. 38, by',
    );
  });

  test('is a refusal with its reason where there is one trial', () => {
    expect(said(perPot(barley.filter(({ trial }) => trial === 'Waseca 1931')))).toBe(
      'No cultivars can be compared across seasons. There is one trial only, and across seasons the trial is the replicate.',
    );
  });
});

describe('what the answer rests on', () => {
  test('counts the trials that had several of the cultivars, and the unreplicated among them', () => {
    const [first] = restsOnTrials(perPot(barley), name);
    expect(first).toMatch(
      /^This rests on 12 trials that had several of these cultivars \(autumn 2025 to autumn 2025\)/,
    );
    expect(first).toContain('; none of them was replicated.');
  });

  test('says of a trial of one cultivar that it tells none apart', () => {
    const cells = barley.filter(
      (cell) =>
        only(['Trebi', 'Velvet', 'Glabron'], /Waseca|Duluth/)(cell) || only(['Trebi'], /Morris 1931/)(cell),
    );
    expect(restsOnTrials(perPot(cells), name)).toContain(
      'One further trial grew one of these cultivars alone and cannot tell any two apart.',
    );
  });

  test('names those that met none of the others, alone or among themselves', () => {
    const main = only(['Trebi', 'Velvet', 'Glabron'], /Waseca|Duluth/);
    const lone = only(['Peatland'], /Crookston 1931/);
    const pair = only(['Manchuria', 'Svansota'], /Morris/);
    expect(restsOnTrials(perPot(barley.filter((cell) => main(cell) || lone(cell))), name)).toContain(
      'Peatland met no other cultivar in any trial and is compared with none.',
    );
    const told = restsOnTrials(perPot(barley.filter((cell) => main(cell) || pair(cell))), name).join(' ');
    expect(told).toMatch(
      /(Manchuria and Svansota|Svansota and Manchuria) met one another but none of the others/,
    );
  });

  test('is silent where nothing is compared', () => {
    expect(restsOnTrials(perPot(barley.filter(({ trial }) => trial === 'Waseca 1931')), name)).toEqual([]);
  });
});
