/** Finds the inputs of a form that are not level with those beside them. */
import type { Page } from 'playwright-core';

/** One line for each two shown inputs whose labels stand beside one another while the inputs do not. */
export function unlevelInputs(page: Page): Promise<string[]> {
  return page.locator('main :is(input, select, textarea):visible').evaluateAll((all) => {
    const inputs = (all as HTMLInputElement[]).flatMap((input) => {
      const label = input.labels?.[0]?.getBoundingClientRect();
      const beside = input.type === 'checkbox' || input.type === 'radio';
      const { top } = input.getBoundingClientRect();
      return label === undefined || beside ? [] : [{ name: `${input.id} at ${top.toFixed(0)}`, top, label }];
    });
    return inputs.flatMap((one, index) =>
      inputs
        .slice(index + 1)
        .filter(({ label }) => one.label.top < label.bottom && label.top < one.label.bottom)
        .filter(({ top }) => Math.abs(top - one.top) > 1)
        .map((other) => `${one.name}, ${other.name}`),
    );
  });
}
