import { say } from '../model/say.ts';
import type { Trial, Variable } from '../model/trial.ts';
import { growthStage } from './growth-stages.ts';

/** What a mark of a variable means; null where nothing says so. */
export function markInWords(variable: Variable | undefined, mark: number): string | null {
  if (variable?.scale === 'yes or no') return mark > 0 ? say('yes') : say('no');
  if (variable?.scale === 'BBCH') return growthStage(mark);
  return variable?.marks?.[String(mark)] ?? null;
}

/** The variable of an entry of the findings: the first judge's where there is a panel. */
export function variableOf({ metadata }: Trial, id: string): Variable | undefined {
  return (
    metadata.variables.find((each) => each.id === id) ?? metadata.variables.find(({ panel }) => panel === id)
  );
}
