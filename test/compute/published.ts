/** The published tables of test/published/ as trials, and their expected numbers. */
import { readFileSync } from 'node:fs';
import type { Trial } from '../../src/model/trial.ts';
import { plantGrowth as plantGrowthWeights } from '../published/plant-growth/plant-growth.ts';
import { type PlantOfTrial, trialOf } from '../support/trial-of.ts';

type Columns = Record<string, (string | number)[]>;

/** A published table, column by column. */
export function publishedTable(name: string): Columns {
  const path = new URL(`../published/${name}/${name}.json`, import.meta.url);
  return (JSON.parse(readFileSync(path, 'utf8')) as { data: Columns }).data;
}

function rowsOf(columns: Columns): Record<string, string | number>[] {
  const names = Object.keys(columns);
  return columns[names[0]!]!.map((_, index) =>
    Object.fromEntries(names.map((name) => [name, columns[name]![index]!])),
  );
}

const text = (value: string | number | undefined) => String(value);

/** Ten pots of each of three treatments on one bench. */
export function plantGrowth(): Trial {
  return trialOf(
    Object.entries(plantGrowthWeights).flatMap(([group, weights]) =>
      weights.map((weight): PlantOfTrial => ({ container: 'B1', treatment: { group }, weight })),
    ),
    { check: { group: 'ctrl' } },
  );
}

/** Six treatments, three pots of each, four plants in a pot. */
export function mint(): Trial {
  const places = new Map<string, number>();
  return trialOf(
    rowsOf(publishedTable('mint')).map((row): PlantOfTrial => {
      const pot = `${row['trt']} ${row['pot']}`;
      if (!places.has(pot)) places.set(pot, places.size + 1);
      return {
        container: 'B1',
        row: places.get(pot)!,
        column: 1,
        treatment: { treatment: text(row['trt']) },
        weight: Number(row['y']),
      };
    }),
  );
}

/** A 2 x 2 x 2 factorial in six blocks of four, each block a bench. */
export function npk(): Trial {
  return trialOf(
    rowsOf(publishedTable('npk')).map((row): PlantOfTrial => ({
      container: `B${row['block']}`,
      block: text(row['block']),
      treatment: { n: text(row['N']), p: text(row['P']), k: text(row['K']) },
      weight: Number(row['y']),
    })),
    { design: { arrangement: 'randomised blocks', allotted: 'position', randomised: true } },
  );
}

/** Three varieties on main plots in six blocks, four levels of nitrogen within: main plots are plots or containers. */
export function oats(mainPlots: 'plot' | 'container'): Trial {
  return trialOf(
    rowsOf(publishedTable('oats')).map((row): PlantOfTrial => {
      const main = `${row['block']}-${row['variety']}`;
      return {
        container: mainPlots === 'container' ? main : `B${row['block']}`,
        block: text(row['block']),
        ...(mainPlots === 'plot' ? { plot: main } : {}),
        treatment: { variety: text(row['variety']), nitrogen: text(row['nitro']) },
        weight: Number(row['y']),
      };
    }),
    { design: { arrangement: 'split plot', allotted: 'position', randomised: true } },
  );
}
