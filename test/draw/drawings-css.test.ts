import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { channels, contrast, lightness } from '../support/contrast.ts';

const css = readFileSync(new URL('../../src/styles/drawings.css', import.meta.url), 'utf8');
const paper = readFileSync(new URL('../../src/styles/paper.css', import.meta.url), 'utf8');
const print = readFileSync(new URL('../../src/styles/print.css', import.meta.url), 'utf8');

/** Custom properties set by the rules of a style sheet within the given media query, or outside any. */
function properties(sheet: string, query: string | null): Record<string, string> {
  const blocks = [...sheet.matchAll(/@media ([^{]+)\{([\s\S]*?)\n\}/g)];
  const outside = sheet.replaceAll(/@media [^{]+\{[\s\S]*?\n\}/g, '');
  const within =
    query === null
      ? outside
      : blocks
          .filter(([, media]) => media!.trim() === query)
          .map(([, , body]) => body)
          .join('\n');
  return Object.fromEntries(
    [...within.matchAll(/(--[\w-]+):\s*(#[0-9a-f]{3,6});/gi)].map(([, key, value]) => [key!, value!]),
  );
}

const light = { ...properties(paper, null), ...properties(css, null) };
const themes = {
  light,
  dark: {
    ...light,
    ...properties(paper, '(prefers-color-scheme: dark)'),
    ...properties(css, '(prefers-color-scheme: dark)'),
  },
  print: { ...light, ...properties(print, 'print'), ...properties(css, 'print') },
  'forced colours': { ...light, ...properties(css, '(forced-colors: active)') },
};
const steps = [1, 2, 3, 4, 5, 6, 7];
const residuals = ['below-3', 'below-2', 'below-1', 'even', 'above-1', 'above-2', 'above-3'];

/** One colour over another. */
function over(colour: string, opacity: number, ground: string): string {
  const [a, b] = [channels(colour), channels(ground)];
  const mixed = a.map((value, index) => Math.round((value * opacity + b[index]! * (1 - opacity)) * 255));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}

describe.each(Object.entries(themes))('figures in %s', (name, theme) => {
  it('set every number on its shade with a contrast of at least 4.5', () => {
    for (const step of steps) {
      expect(
        contrast(theme[`--step-${String(step)}`]!, theme[`--on-${String(step)}`]!),
      ).toBeGreaterThanOrEqual(4.5);
    }
    for (const shade of residuals) {
      expect(contrast(theme[`--${shade}`]!, theme[`--on-${shade}`]!)).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('climb the ramp in steps of even lightness, without turning back', () => {
    const lightnesses = steps.map((step) => lightness(theme[`--step-${String(step)}`]!));
    const climbs = lightnesses.slice(1).map((value, index) => value - lightnesses[index]!);
    const mean = (lightnesses.at(-1)! - lightnesses[0]!) / climbs.length;
    for (const climb of climbs) {
      expect(Math.abs(climb - mean)).toBeLessThan(0.75);
      expect(Math.abs(climb)).toBeGreaterThan(5);
    }
  });

  it('write words on the paper with a contrast of at least 4.5, and draw marks with at least 3', () => {
    for (const ink of ['--ink', '--soft'])
      expect(contrast(theme[ink]!, theme['--paper']!)).toBeGreaterThanOrEqual(4.5);
    expect(
      contrast(over(theme['--accent']!, 0.75, theme['--paper']!), theme['--paper']!),
    ).toBeGreaterThanOrEqual(3);
    expect(contrast(theme['--control']!, theme['--paper']!)).toBeGreaterThanOrEqual(3);
  });

  it('shade what lies above and what lies below by the same lightness, further from the even at each step', () => {
    for (const side of ['below', 'above']) {
      const away = [1, 2, 3].map((step) =>
        Math.abs(lightness(theme[`--${side}-${String(step)}`]!) - lightness(theme['--even']!)),
      );
      if (side === 'above' || name === 'light' || name === 'dark') {
        expect(away[0]!).toBeGreaterThan(3);
        expect(away[1]!).toBeGreaterThan(away[0]!);
        expect(away[2]!).toBeGreaterThan(away[1]!);
      }
    }
  });
});

describe('the style sheet of figures', () => {
  it('sets no type below 11 px', () => {
    const sizes = [...css.matchAll(/font-size:\s*([\d.]+)px/g)].map(([, size]) => Number(size));
    expect(sizes.length).toBeGreaterThan(4);
    for (const size of sizes) expect(size).toBeGreaterThanOrEqual(11);
  });

  it('has the opacity of dots that their contrast is reckoned with', () => {
    expect(css).toMatch(/\.plot \.dot \{[^}]*fill-opacity: 0\.75;/);
  });

  it('goes grey in print', () => {
    for (const step of steps) {
      const [red, green, blue] = channels(themes.print[`--step-${String(step)}`]!);
      expect(red === green && green === blue).toBe(true);
    }
  });
});
