import type { Trial } from '../../model/trial.ts';
import { heldByName, reactsByName } from '../nutrients/held-by-name.ts';
import type { Recipe } from '../nutrients/recipe.ts';
import { saltAnalysis } from '../nutrients/salt-analysis.ts';
import type { Topic } from './caution.ts';

/** Kinds of container that hold open, still water. */
const ofWater: readonly string[] = ['tank', 'tray', 'gutter'];

/** Settings with a roof, where lamps and fans are usual. */
const withRoof: readonly string[] = ['greenhouse', 'indoors'];

/** What of a trial calls for cautions. Every trial here grows plants that somebody may eat. */
export function topicsOf({ metadata }: Pick<Trial, 'metadata'>): Topic[] {
  const { containers, site, factors = [], nutrients } = metadata;
  const water = containers.some(({ kind }) => ofWater.includes(kind));
  const topics: [Topic, boolean][] = [
    ['open water', water],
    ['still water', water],
    ['solution', water],
    ['food', true],
    ['under a roof', withRoof.includes(site.setting ?? '')],
    ['cultivars', metadata.crop.cultivar !== undefined || factors.some(({ kind }) => kind === 'cultivar')],
    ['plants', true],
  ];
  const found = topics.flatMap(([topic, present]) => (present ? [topic] : []));
  return [...new Set([...(nutrients ? topicsOfRecipe(nutrients) : []), ...found])];
}

/** What of a recipe calls for cautions; nothing where it is of water alone. */
export function topicsOfRecipe(recipe: Recipe): Topic[] {
  const { salts = [], stock_ratio: ratio } = recipe;
  if (salts.length === 0) return [];
  const nitrate = salts.some((salt) => {
    const { percent } = saltAnalysis(salt);
    return (percent.NO3_N.value ?? 0) > 0 || heldByName(salt.name).has('NO3_N');
  });
  const strong = salts.some(
    ({ name, formula = '' }) =>
      reactsByName(name) !== null || /^(HNO3|H3PO4|H2SO4|HCl|KOH|NaOH)$/.test(formula),
  );
  const stocks = ratio !== undefined || salts.some(({ stock }) => stock !== undefined);
  return [
    'salts',
    ...(nitrate ? (['nitrate salts'] as const) : []),
    ...(strong ? (['acids and alkalis'] as const) : []),
    ...(stocks ? (['stocks'] as const) : []),
    'solution',
  ];
}
