import { describe as suite, expect, test } from 'vitest';
import { computeFindings } from '../../../src/compute/findings.ts';
import { findingSentence } from '../../../src/compute/words/finding-sentence.ts';
import { plainText } from '../../../src/compute/words/words.ts';
import { plantGrowth } from '../published.ts';
import { type PlantOfTrial, trialOf, type TrialOptions } from '../../support/trial-of.ts';

/** Plants of each level at single positions of one tank, each level's weights around its mean. */
function told(means: Record<string, number>, options: TrialOptions = {}): string {
  const plants = Object.entries(means).flatMap(([cultivar, mean]) =>
    [-8, -3, 0, 3, 8].map((step): PlantOfTrial => ({
      container: 'T1',
      treatment: { cultivar },
      weight: mean + step,
    })),
  );
  const trial = trialOf(plants, { variable: { resolution: 1 }, ...options });
  // Non-breaking spaces stand between number and unit.
  return plainText(findingSentence(trial, computeFindings(trial))).replaceAll('\u00A0', ' ');
}

suite('the finding in a sentence', () => {
  test('tells each level against the check, effect and interval first', () => {
    const text = told({ wren: 120, plover: 160, egret: 122 }, { check: { cultivar: 'wren' } });
    expect(text).toMatch(
      /^Plover outweighed the check Wren by 40 g a plant \(95% interval \d+ g to \d+ g\)\./,
    );
    expect(text).toMatch(
      /Egret was 2 g a plant heavier than it, less than the \d+ g that this trial could tell apart\.$/,
    );
    expect(text).not.toMatch(/p [=<]/);
  });

  /** Two strengths and two kinds, five plants of each pair; `crossed` is what one pair gave beyond the sum. */
  const factorial = (crossed: number) =>
    ['0.5', '1'].flatMap((strength, s) =>
      ['wren', 'plover'].flatMap((kind, k) =>
        [-8, -3, 0, 3, 8].map((step): PlantOfTrial => ({
          container: 'T1',
          treatment: { strength, kind },
          weight: 100 + 30 * s + 20 * k + crossed * s * k + step,
        })),
      ),
    );
  const toldOfFactors = (plants: PlantOfTrial[]) => {
    const trial = trialOf(plants, { check: { strength: '1', kind: 'wren' } });
    return plainText(findingSentence(trial, computeFindings(trial))).replaceAll('\u00A0', ' ');
  };

  test('holds the levels of each factor against the check of that factor', () => {
    const text = toldOfFactors(factorial(0));
    expect(text).toMatch(/^\S+ 0\.5 weighed less than the check \S+ 1 by 30\.0 g a plant \([^)]+\)\./);
    expect(text).toMatch(/\. Plover outweighed the check Wren by 20\.0 g a plant \([^)]+\)\.$/);
  });

  test('says that averages over another factor are averages where what one did depended on the other', () => {
    expect(toldOfFactors(factorial(0))).not.toContain('averages');
    expect(toldOfFactors(factorial(30))).toMatch(
      / These are averages: what one did depended on the other \(Strength × Kind\)\.$/i,
    );
  });

  test('tells the widest difference and the pairs not told apart where there is no check', () => {
    const text = told({ wren: 120, plover: 160, egret: 122 });
    expect(text).toMatch(/^Plover outweighed wren by 40 g a plant \(95% interval \d+ g to \d+ g\)\./i);
    expect(text).toContain('Not told apart: Wren and Egret.');
  });

  test('says that none were told apart, with the interval', () => {
    expect(told({ wren: 120, plover: 122 })).toMatch(
      /^No two treatments were told apart: the widest difference, between .+, was 2 g a plant \(95% interval −\d+ g to \d+ g\)\.$/,
    );
  });

  /** One pot of each level, so that nothing is tested. */
  const onePotEach = (weights: Record<string, number>, options: TrialOptions = {}) => {
    const plants = Object.entries(weights).map(([cultivar, weight]): PlantOfTrial => ({
      container: 'T1',
      treatment: { cultivar },
      weight,
    }));
    const trial = trialOf(plants, { variable: { resolution: 1 }, ...options });
    return plainText(findingSentence(trial, computeFindings(trial))).replaceAll('\u00A0', ' ');
  };

  test('says of treatments that gave the same that they did, not that one weighed most', () => {
    expect(onePotEach({ wren: 57, plover: 57 })).toMatch(
      /^All treatments gave 57 g a plant on average\. This des/,
    );
  });

  test('tells scores that are not tested by their medians, as marks', () => {
    const scored = { variable: { kind: 'scored' as const, unit: '1' } };
    expect(onePotEach({ wren: 5, plover: 2, egret: 4 }, scored)).toMatch(
      /^Wren had the highest median, 5, and Plover the lowest, 2\. This describes/,
    );
  });

  test('never calls an amount less than one that prints alike', () => {
    // Four pots of each at 100 - 10, 100 + 10 and so on: Dunnett's reach is that of Student's t, 2.4469 on 6
    // degrees of freedom, times a standard error of 8.1650, so 19.979; the difference is 19.9. Both are 20 g, and in ounces alike to one digit more.
    const steps = [-10, 10, -10, 10];
    const plants = ['wren', 'plover'].flatMap((cultivar, c) =>
      steps.map((step): PlantOfTrial => ({
        container: 'T1',
        treatment: { cultivar },
        weight: 100 + 19.9 * c + step,
      })),
    );
    const trial = trialOf(plants, { check: { cultivar: 'wren' }, variable: { resolution: 1 } });
    const text = plainText(findingSentence(trial, computeFindings(trial))).replaceAll('\u00A0', ' ');
    expect(text).toBe(
      'Plover was 19.90 g a plant heavier than the check Wren, less than the 19.98 g that this trial could tell apart.',
    );
  });

  test('describes a trial that tests nothing, and says so', () => {
    const plants = ['wren', 'plover'].flatMap((cultivar, tank) =>
      [100, 110].map((weight): PlantOfTrial => ({
        container: `T${tank}`,
        treatment: { cultivar },
        weight: weight + 30 * tank,
      })),
    );
    const trial = trialOf(plants);
    const text = plainText(findingSentence(trial, computeFindings(trial))).replaceAll('\u00A0', ' ');
    expect(text).toContain('Plover weighed most, 135.0 g a plant on average, and Wren least, 105.0 g.');
    expect(text).toContain('describes what was found and tests nothing');
  });

  test('never prints a difference that is there as 0, in either unit', () => {
    const words = findingSentence(plantGrowth(), computeFindings(plantGrowth()));
    for (const piece of words) {
      if (typeof piece === 'string') continue;
      expect(piece.metric).toMatch(/[1-9]/);
      expect(piece.us).toMatch(/[1-9]/);
    }
  });
});
