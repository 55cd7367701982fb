import type { Warning, WarningKind } from '../compute/nutrients/recipe.ts';
import { solutionOf } from '../compute/nutrients/solution.ts';
import type { Path } from '../read/yaml.ts';
import type { Facts, Metadata } from './facts.ts';

/** What the recipe's reckoning warns of, of one kind, each with the path of the salt that it is about, or of the recipe. */
export function recipeWarnings({ metadata }: Facts, kind: WarningKind): { text: string; path: Path }[] {
  const { nutrients } = metadata.draft;
  if (nutrients === undefined || !isRecipeWhole(metadata)) return [];
  const warnings = solutionOf(nutrients).warnings.filter((warning) => warning.kind === kind);
  return warnings.map(({ text, salt }) => ({ text: asProblem(text), path: pathOf(salt) }));
}

/** False where a part of the recipe was refused: the rest would be reckoned without it. */
export function isRecipeWhole({ lost }: Metadata): boolean {
  return ![...lost].some((key) => key === 'nutrients' || key.startsWith('nutrients.'));
}

function pathOf(salt: Warning['salt']): Path {
  return salt === null ? ['nutrients'] : ['nutrients', 'salts', salt];
}

/** A sentence as problems print it: without a full stop at its end. */
function asProblem(text: string): string {
  return text.replace(/\.$/, '');
}
