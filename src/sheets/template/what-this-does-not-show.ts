import { headlineOf } from '../../compute/words/headline.ts';
import { say } from '../../model/say.ts';
import type { TemplateWriting } from './template-writing.ts';

/** The part on what the trial cannot tell, by its verdict and by what was weighed. */
export function whatThisDoesNotShow({ trial, findings }: TemplateWriting): string[] {
  const { factors = [], variables } = trial.metadata;
  const inference = headlineOf(trial, findings).inference;
  const points =
    findings.treatments.length < 2
      ? [say('There was nothing to set it beside, so this is a record and no comparison.')]
      : inference?.verdict === 'tested'
        ? [say('Where two are not told apart, this trial was too small to say which is ahead.')]
        : [say('Nothing was tested. What came out ahead may owe that to its place, or to luck.')];
  points.push(say('This was one trial, in one place and one season. Yours may turn out otherwise.'));
  if (factors.some(({ kind }) => kind === 'cultivar'))
    points.push(say('It tells nothing of kinds that were not in it.'));
  if (variables.length === 1 && findings.variable.unit === 'g')
    points.push(
      say('We weighed, and did no more: it tells nothing of taste, of price or of how long a crop keeps.'),
    );
  return [points.map((point) => `- ${point}`).join('\n')];
}
