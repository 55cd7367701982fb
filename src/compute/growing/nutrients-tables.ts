import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { ecRange } from '../nutrients/ec-estimates.ts';
import type { Recipe } from '../nutrients/recipe.ts';
import { solutionOf } from '../nutrients/solution.ts';
import { atStrength, strengthOf } from '../nutrients/strength-of.ts';
import { conductivityTable, type Measured } from '../solution/conductivity-table.ts';
import { contentTables } from '../solution/content-tables.ts';
import { mixingTables } from '../solution/mixing-tables.ts';
import { litresOfContainer } from '../solution/recipes-of.ts';
import { ratiosTable } from '../solution/ratios-table.ts';
import { distinct, type PageTable } from '../tables/page-table.ts';

/** What a trial's recipe amounts to, at full strength: contents, charges, ratios, conductivity. None without a recipe. */
export function nutrientsTables({ metadata, readings }: Trial): PageTable[] {
  const { nutrients } = metadata;
  if (!nutrients) return [];
  const solution = solutionOf(nutrients);
  const conductivity = conductivityTable(solution, measuredFirst({ metadata, readings }, nutrients));
  const notes = distinct([...solution.warnings.map(({ text }) => text), solution.reason]);
  return [...contentTables(solution), ratiosTable(solution), { ...conductivity, notes }];
}

/**
 * What to weigh for one container of the trial, the first that gives a volume, and for a litre of each stock. None
 * without salts or a volume.
 */
export function weighingTables({ metadata }: Pick<Trial, 'metadata'>): PageTable[] {
  const { nutrients } = metadata;
  const litres = litresOfContainer({ metadata });
  if (!nutrients?.salts || litres === null) return [];
  return mixingTables(solutionOf(nutrients), { litres, ratio: nutrients.stock_ratio, stockLitres: 1 });
}

/** The first conductivity read in each container, by the strength that it was filled with. */
function measuredFirst(
  { metadata, readings }: Pick<Trial, 'metadata' | 'readings'>,
  recipe: Recipe,
): Measured[] {
  const first = new Map<string, number>();
  for (const { container, ec } of readings.toSorted((a, b) => (a.date < b.date ? -1 : 1)))
    if (ec !== null && !first.has(container)) first.set(container, ec);
  const { factors = [] } = metadata;
  const filled = metadata.containers.flatMap(({ id, treatment }) => {
    const value = first.get(id);
    return value === undefined ? [] : [{ id, value, strength: strengthOf(treatment, factors) }];
  });
  return [...Map.groupBy(filled, ({ strength }) => strength)].flatMap(([strength, containers]) => {
    const values = containers.map(({ value }) => value);
    const named = containers.map(({ id }) => id).join(', ');
    const measured = {
      heading: say('Measured first in {containers}', { containers: named }),
      lowest: Math.min(...values),
      highest: Math.max(...values),
    };
    const range =
      strength === null || strength === 1 ? null : ecRange(solutionOf(atStrength(recipe, strength)).ec);
    if (!range) return [measured];
    return [
      {
        heading: say('Range of the estimates at strength {strength}', { strength: String(strength) }),
        ...range,
      },
      measured,
    ];
  });
}
