import type { Trial } from '../../model/trial.ts';
import type { Example, ExampleTrial, Method } from './method.ts';

/** A method's example from the first of the trials that has one, null where none has. */
export function firstExample(
  method: Method,
  trials: readonly ExampleTrial[],
): { trial: Trial; example: Example } | null {
  for (const each of trials) {
    const example = method.example(each);
    if (example !== null) return { trial: each.trial, example };
  }
  return null;
}
