/** Finds what makes a page scroll sideways. */
import type { Page } from 'playwright-core';

/**
 * Empty where the page fits its window's width; else its widths and the first few elements that stick
 * out, leaving out those that lie in a part which scrolls or clips by itself.
 */
export function overflow(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = window.innerWidth;
    const needed = Math.max(document.documentElement.scrollWidth, document.body.scrollWidth);
    if (needed <= width) return [];
    const contained = (element: Element): boolean => {
      for (let up = element.parentElement; up && up !== document.body; up = up.parentElement) {
        if (getComputedStyle(up).overflowX !== 'visible') return true;
      }
      return false;
    };
    const out = [...document.body.querySelectorAll('*')].filter((element) => {
      return element.getBoundingClientRect().right > width + 0.5 && !contained(element);
    });
    const named = out.slice(0, 5).map((element) => {
      const right = element.getBoundingClientRect().right.toFixed(0);
      return `${element.tagName.toLowerCase()}#${element.id}.${element.getAttribute('class') ?? ''} ends at ${right}`;
    });
    return [`needs ${needed} of ${width} px`, ...named];
  });
}
