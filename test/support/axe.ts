/** Checks the page that is open by axe, at the levels of WCAG 2.2 A and AA. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** One line for each element that breaks a rule: the rule, the element, what is wrong. */
export async function axeCheck(page: Page): Promise<string[]> {
  // By the debugger, not by a script tag: the page's own policy would rightly refuse that.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (values) => {
    const runner = (window as unknown as { axe: typeof axe }).axe;
    const { violations } = await runner.run(document, {
      runOnly: { type: 'tag', values },
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) => {
      return nodes.map((node) => `${id}: ${node.target.join(' ')}: ${node.failureSummary ?? ''}`);
    });
  }, tags);
}
