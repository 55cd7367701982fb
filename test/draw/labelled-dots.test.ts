import { expect, test } from 'vitest';
import { narrow } from '../../src/draw/grid-map.ts';
import { placeLabelledDots } from '../../src/draw/labelled-dots.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { seededRandom } from '../../src/statistics/seeded-random.ts';

const [radius, size] = [4.5, 12];
const words = ['spring 2024', 'autumn 2025', 'late summer 2026', 'winter 2024, a-long-trial-id', ''];

/** Where a dot with its words stands at a width: the edges of both, in px. */
function edges(percent: number, text: string, side: 'left' | 'right', width: number): [number, number] {
  const at = (percent / 100) * width;
  const reach = text === '' ? 0 : textWidth(text, size) + 4;
  return side === 'left' ? [at - radius - reach, at + radius] : [at - radius, at + radius + reach];
}

test.each([narrow, 430, 736])('no words or dots of a line meet at %i px', (width) => {
  const random = seededRandom(41);
  for (let round = 0; round < 200; round += 1) {
    const dots = Array.from({ length: 1 + random.integer(12) }, () => ({
      percent: 4 + random.integer(89),
      text: words[random.integer(words.length)]!,
    }));
    const placed = placeLabelledDots(dots, radius, size);
    const lines = Map.groupBy(
      placed.map(({ line, side }, index) => ({
        line,
        edges: edges(dots[index]!.percent, dots[index]!.text, side, width),
      })),
      ({ line }) => line,
    );
    for (const line of lines.values()) {
      const inOrder = line.map((each) => each.edges).sort((a, b) => a[0] - b[0]);
      inOrder.slice(1).forEach(([from], index) => expect(from).toBeGreaterThan(inOrder[index]![1]));
    }
  }
});

test('words stay within the drawing: those of the right half run to the left', () => {
  const [left, right] = placeLabelledDots(
    [
      { percent: 4, text: 'spring 2024' },
      { percent: 92, text: 'spring 2024' },
    ],
    radius,
    size,
  );
  expect([left, right]).toEqual([
    { line: 0, side: 'right' },
    { line: 0, side: 'left' },
  ]);
});

test('dots that would lie on one another are put on lines of their own', () => {
  const placed = placeLabelledDots(
    [
      { percent: 40, text: '' },
      { percent: 40, text: '' },
    ],
    radius,
    size,
  );
  expect(placed.map(({ line }) => line)).toEqual([0, 1]);
});
