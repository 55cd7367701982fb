import { expect, test } from 'vitest';
import { seasons } from '../../src/compare/seasons.ts';
import { steadinessEnds } from '../../src/compare/steadiness-ends.ts';
import { steadinessSentence } from '../../src/compare/words/steadiness-sentence.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';
import { barley, trialsOf } from './barley-trials.ts';

const entry = seasons(trialsOf(barley)).find(({ measure }) => measure === 'per_pot')!;

test('a line read at the poorest and the best trial agrees with predict in R', async () => {
  for (const cultivar of ['Trebi', 'Svansota']) {
    const trials = [...new Set(barley.map(({ trial }) => trial))];
    const own = trials.map(
      (trial) => barley.find((cell) => cell.trial === trial && cell.variety === cultivar)!.y,
    );
    const expected = await numbersFromR(
      `index <- as.numeric(tapply(y, factor(t, levels = u), mean))
       at <- data.frame(index = c(min(index), max(index)))
       as.numeric(t(predict(lm(own ~ index), at, interval = 'confidence') - at$index))`,
      { y: barley.map(({ y }) => y), t: barley.map(({ trial }) => trial), u: trials, own },
    );
    const { poor, good } = steadinessEnds(entry, cultivar)!;
    [poor.estimate, poor.lower, poor.upper, good.estimate, good.lower, good.upper].forEach((value, index) => {
      expectClose(value, expected[index]!, 1e-9);
    });
  }
});

test('a cultivar of few trials has no line, and the sentence says that it cannot be judged', () => {
  const few = seasons(trialsOf(barley.slice(0, 30))).find(({ measure }) => measure === 'per_pot')!;
  expect(steadinessEnds(few, 'Trebi')).toBeNull();
  expect(steadinessSentence(few, 'Trebi', (cultivar) => cultivar)).toBe(
    'Trebi stood beside others in fewer than 4 trials, so it cannot be judged how steady it is.',
  );
  expect(steadinessSentence(entry, 'Trebi', (cultivar) => cultivar)).toMatch(/^Trebi did better than/);
});
