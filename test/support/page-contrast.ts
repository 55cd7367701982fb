/** Measures the contrast of every text that a page shows, as the browser has reckoned its colours. */
import type { Page } from 'playwright-core';
import { contrast } from './contrast.ts';

/** A text with its colour and the ground beneath it, each as #rrggbb. */
interface ShownText {
  text: string;
  colour: string;
  ground: string;
}

/** One line for each text whose contrast lies below the least; throws where a page shows none, or a colour is see-through. */
export async function faintTexts(page: Page, least: number): Promise<string[]> {
  const texts = await shownTexts(page);
  if (texts.length === 0) throw new Error('the page shows no text');
  return texts
    .map(({ text, colour, ground }) => ({ text, ratio: contrast(colour, ground), colour, ground }))
    .filter(({ ratio }) => ratio < least)
    .map(({ text, ratio, colour, ground }) => `“${text}” has ${ratio.toFixed(2)} (${colour} on ${ground})`);
}

function shownTexts(page: Page): Promise<ShownText[]> {
  return page.evaluate(() => {
    const parts = (colour: string) => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const isClear = (colour: string) => parts(colour)[3] === 0;
    const hex = (colour: string): string => {
      const [red, green, blue, alpha = 1] = parts(colour);
      if (!colour.startsWith('rgb') || alpha < 1) throw new Error(`a colour that is not plain: ${colour}`);
      return `#${[red, green, blue].map((part) => part!.toString(16).padStart(2, '0')).join('')}`;
    };
    const groundOf = (element: Element): string => {
      for (let up: Element | null = element; up !== null; up = up.parentElement) {
        const { backgroundColor } = getComputedStyle(up);
        if (!isClear(backgroundColor)) return hex(backgroundColor);
      }
      return '#ffffff';
    };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const found: ShownText[] = [];
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (element === null || text === '' || element.closest('script, style, noscript') !== null) continue;
      const { width, height } = element.getBoundingClientRect();
      if (width <= 1 || height <= 1 || !element.checkVisibility()) continue;
      found.push({
        text: text.slice(0, 40),
        colour: hex(getComputedStyle(element).color),
        ground: groundOf(element),
      });
    }
    return found;
  });
}
