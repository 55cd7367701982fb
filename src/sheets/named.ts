import type { Trial } from '../model/trial.ts';
import type { SheetContext } from './component.ts';

/** A caption that says which trial it is of, where the sheet is not that trial's own. */
export function named({ own }: Pick<SheetContext, 'own'>, trial: Trial, caption: string): string {
  return own?.trial === trial ? caption : `${trial.metadata.title}: ${caption}`;
}
