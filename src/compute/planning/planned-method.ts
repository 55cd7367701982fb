import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { headlineMeasure } from '../headline-measure.ts';
import { modelInWords } from '../inference/verdict-words.ts';
import type { PlannedAnalysis } from './planned-analysis.ts';

/**
 * The analysis that the layout calls for, as it will be done: the model with its error, the test, and how levels are
 * compared. Empty where nothing will be tested.
 */
export function plannedMethod(trial: Trial, { design, terms, errors }: PlannedAnalysis): string[] {
  if (!terms.some(({ errorDf }) => errorDf > 0)) return [];
  const model = modelInWords(trial, headlineMeasure(trial), design.blocks, design.terms, errors);
  const hasCheck = (trial.metadata.factors ?? []).some(({ check }) => check !== undefined);
  return [
    say(
      'The analysis is fixed by the layout: {model}; each term is tested by F at the 5% level against the error of its own unit.',
      { model },
    ),
    hasCheck
      ? say(
          'Levels are then compared in pairs by Tukey and Kramer’s method, and each with the check by Dunnett’s, with 95% simultaneous limits.',
        )
      : say('Levels are then compared in pairs by Tukey and Kramer’s method, with 95% simultaneous limits.'),
  ];
}
