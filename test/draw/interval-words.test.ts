import { afterEach, expect, test } from 'vitest';
import { formatRange } from '../../src/compute/format/format-range.ts';
import { narrow } from '../../src/draw/grid-map.ts';
import { intervalWords } from '../../src/draw/interval-words.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { writeIn } from '../../src/model/language.ts';
import '../../src/model/messages.ts';

afterEach(() => {
  writeIn('en');
});

test('what stands before limits leaves them room on a phone, in either language', () => {
  for (const [language, words] of [
    ['en', '95% interval '],
    ['es', 'Intervalo del 95 % '],
  ] as const) {
    writeIn(language);
    expect(intervalWords(formatRange(140, 165, 'g', 0)).replaceAll('\u00A0', ' ')).toBe(words);
    const limits = formatRange(-114.2, 132.4, 'g', 1, { plus: true });
    const whole = `${intervalWords(limits)}${limits.metric} · ${limits.us!}`;
    expect(textWidth(whole, 12)).toBeLessThanOrEqual(narrow);
  }
});
