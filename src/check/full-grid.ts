import type { Position } from '../model/trial.ts';
import type { Layout, Metadata } from './facts.ts';
import { emptyGrid } from './grid.ts';
import { ownValue } from './own-value.ts';
import { plantsPerPot } from './plants-per-pot.ts';
import type { Report } from './rule.ts';
import { reportMissingLayout } from './rules/missing-layout.ts';

/**
 * The layout where there is no layout.csv: every position of each container's grid is planted with its treatment.
 *
 * @param isMisnamed true where a layout.csv lies there under another name, which is reported as such
 */
export function fullGrid({ draft, lost }: Metadata, report: Report, isMisnamed = false): Layout {
  const containers = draft.containers ?? [];
  const factors = draft.factors ?? [];
  const grid = emptyGrid(containers);
  const positions: Position[] = [];
  const without = new Map<string, readonly [container: string, factor: string, level: string]>();
  let complete = !lost.has('containers') && !lost.has('factors');
  let isKnown = true;
  for (const container of grid.containers.values()) {
    const treatment: Record<string, string> = {};
    for (const { id, levels } of factors) {
      const level = ownValue(container.treatment, id);
      if (level !== undefined) {
        treatment[id] = level;
        if (!levels.some((one) => one.id === level)) isKnown = false;
      } else {
        complete = false;
        // A trial that is not finished may still wait for its lots.
        const isRefused =
          lost.has('containers.treatment') ||
          Object.keys(container.treatment ?? {}).some((key) => !factors.some((one) => one.id === key));
        if (draft.status === 'finished' && !isRefused && !isMisnamed && !without.has(container.id))
          without.set(container.id, [container.id, id, levels[0]?.id ?? '']);
      }
    }
    if (Object.keys(treatment).length < factors.length) continue;
    const plants = plantsPerPot(treatment);
    for (let row = 1; row <= container.rows; row += 1) {
      for (let column = 1; column <= container.columns; column += 1) {
        const at = { container: container.id, row, column };
        grid.put(at.container, row, column, positions.length);
        positions.push({ ...at, treatment, block: container.block ?? null, plot: null, plants, line: null });
      }
    }
  }
  reportMissingLayout(report, [...without.values()]);
  return { table: null, positions, starts: [], grid, complete, treated: complete && isKnown };
}
