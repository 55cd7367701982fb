import type { Figure } from '../model/figure.ts';
import type { Trial } from '../model/trial.ts';
import type { SheetContext } from './component.ts';
import { named } from './named.ts';

/** Figures that say in their titles which trial they are of, where the sheet is not that trial's own. */
export function namedFigures(
  context: Pick<SheetContext, 'own'>,
  trial: Trial,
  figures: readonly Figure[],
): Figure[] {
  return figures.map((figure) => ({ ...figure, title: named(context, trial, figure.title) }));
}
