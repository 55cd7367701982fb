import { describe, expect, test } from 'vitest';
import { seasons } from '../../../src/compare/seasons.ts';
import { interactionSentence } from '../../../src/compare/words/interaction-sentence.ts';
import { steadinessSentences } from '../../../src/compare/words/steadiness-sentences.ts';
import type { Seasons } from '../../../src/model/generated/seasons.ts';
import { barley, type BarleyCell, trialsOf } from '../barley-trials.ts';

const perPot = (cells: readonly BarleyCell[]): Seasons =>
  seasons(trialsOf(cells)).find(({ measure }) => measure === 'per_pot')!;
const name = (cultivar: string) => cultivar;

/** Six trials of three cultivars: A gains in good ones only, B is the mirror of it, C keeps to the average. */
function gainer(gain: (trial: number) => number): Seasons {
  const wobble = [0.3, -0.3, 0.2, -0.2, 0.1, -0.1];
  return perPot(
    [100, 110, 120, 130, 140, 150].flatMap((mean, trial) => [
      { variety: 'A', trial: `T${trial}`, y: mean + gain(trial) + wobble[trial]! },
      { variety: 'B', trial: `T${trial}`, y: mean - gain(trial) - wobble[5 - trial]! },
      { variety: 'C', trial: `T${trial}`, y: mean - wobble[trial]! + wobble[5 - trial]! },
    ]),
  );
}

describe('steadiness in plain words', () => {
  test('better in good seasons, no worse in poor ones', () => {
    const told = steadinessSentences(
      gainer((trial) => 2 * trial),
      name,
    );
    expect(told).toContain('A did better than the trials’ average in good seasons, no worse in poor ones.');
  });

  test('better in good seasons, worse in poor ones, and the other way round', () => {
    const told = steadinessSentences(
      gainer((trial) => 4 * (trial - 2.5)),
      name,
    );
    expect(told).toContain('A did better than the trials’ average in good seasons, worse in poor ones.');
    expect(told).toContain('B did better than the trials’ average in poor seasons, worse in good ones.');
  });

  test('better throughout and worse throughout', () => {
    const told = steadinessSentences(
      gainer(() => 10),
      name,
    );
    expect(told[0]).toBe('A did better than the trials’ average in good seasons and in poor ones.');
    expect(told.at(-2)).toBe('B did worse than the trials’ average in good seasons and in poor ones.');
  });

  test('every barley is spoken of once', () => {
    const told = steadinessSentences(perPot(barley), name).join(' ');
    const varieties = [...new Set(barley.map(({ variety }) => variety))];
    for (const variety of varieties) expect(told.split(variety)).toHaveLength(2);
  });

  test('cannot be judged with fewer than four trials, which says how many there are', () => {
    const few = perPot(barley.filter(({ trial }) => /Waseca|Duluth 1931/.test(trial)));
    expect(steadinessSentences(few, name)).toEqual([
      'How steady a cultivar is cannot be judged: that takes at least 4 trials in which the same cultivars met, and of trials with several cultivars there are 3.',
    ]);
  });
});

describe('whether differences change from trial to trial', () => {
  const tested = (p: number) =>
    interactionSentence({ interaction: { f: 6.2455, df: 2, error_df: 11.98, p, trials: 2 } }).replaceAll(
      '\u00A0',
      ' ',
    );

  test('is said with its F, degrees of freedom and p', () => {
    expect(tested(0.0139)).toBe(
      'Among the 2 replicated trials the differences between cultivars changed by more than the error within the trials explains (cultivar × trial, F = 6.25 on 2 and 12.0 degrees of freedom, p = 0.014): which cultivar does better hangs on the season or the place.',
    );
    expect(tested(0.4)).toContain('changed by no more than the error within the trials explains');
  });

  test('cannot be tested without two replicated trials', () => {
    expect(interactionSentence({ interaction: null })).toContain('takes two replicated trials');
  });
});
