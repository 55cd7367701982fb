import { say } from '../../model/say.ts';
import type { Factor, Trial } from '../../model/trial.ts';
import { listed } from '../words/words.ts';
import type { TreatmentTerm } from './analysis-design.ts';

/** Why a term is not tested, in a grower's words, and what would have made it testable. */
export function withoutReplicates(trial: Trial, term: TreatmentTerm): string {
  return say(
    'Each {factor} had one {unit} of its own, so {factor} and {unit} cannot be told apart: what differs between {units} for any other reason would show as well. The numbers describe these {units} and test nothing. With at least two {units} for each {factor}, drawn by lot, it could have been tested.',
    wordsOf(trial, term),
  );
}

/** Where replicates are there, but blocks and the terms fitted before use them up. */
export function withoutErrorDegrees(trial: Trial, term: TreatmentTerm): string {
  return say(
    'Once blocks and treatments are allowed for, no {units} are left over to show how much {units} differ by themselves, so {factor} cannot be tested. One more {unit} for each {factor}, or one more block, would have made it testable.',
    wordsOf(trial, term),
  );
}

export function confoundedWithBlock(trial: Trial, term: TreatmentTerm): string {
  return say(
    'Within a block {factor} never varies, or varies only together with something fitted before it, so {factor} and block cannot be told apart. Had every block held each {factor}, it could have been tested.',
    wordsOf(trial, term),
  );
}

/** Where a factor has no F because some of its combinations with another were not grown. */
export function withoutCombinations(trial: Trial, term: TreatmentTerm): string {
  return say(
    'Not every combination of {factor} with the other factors was grown or weighed, so no F tells whether {factor} makes a difference over all its levels. Only levels that had every combination are compared.',
    { factor: inWords(trial, term) },
  );
}

function wordsOf(trial: Trial, term: TreatmentTerm): { factor: string; unit: string; units: string } {
  return { factor: inWords(trial, term), unit: say(term.unit), units: say(`${term.unit}s`) };
}

export const nothingVaries = (): string =>
  say(
    'Units treated alike weighed alike to the last digit, so there is no error to test against. The numbers stand as they are.',
  );

export const wholePots = (): string => say('Pots were weighed whole, so nothing is known of single plants.');

export const scoresOfSeveralStrata = (): string =>
  say(
    'Scores are compared by their ranks, and for units within units there is no plain test on ranks. The medians stand as they are.',
  );

export const scoresOfSquares = (): string =>
  say(
    'Scores are compared by their ranks, and for rows and columns at once there is no plain test on ranks. The medians stand as they are.',
  );

export const scoresAreNotSummed = (): string =>
  say('Scores are marks, not amounts: those of several plants of a pot are not summed.');

export const tooFewTreatments = (): string =>
  say('Fewer than two treatments have a known weight, so there is nothing to compare.');

export const notRandomised = (): string =>
  say(
    'Lots were not drawn: a test supposes that chance alone decided which unit had which treatment, so read every p and interval here with that in mind.',
  );

/** A test that the numbers did not allow, and why. */
export const noTest = (reason: string): string =>
  say('No test could be made: {reason}.', { reason: say(reason) });

/** The factors of a term by name: "cultivar", "cultivar and strength". */
export function inWords(trial: Trial, term: Pick<TreatmentTerm, 'factors'>): string {
  const factors = trial.metadata.factors ?? [];
  const name = (id: string) => lowerFirst(factors.find((factor: Factor) => factor.id === id)?.name ?? id);
  return listed(term.factors.map(name));
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** "per pot", "per plant set", "per plant harvested". */
export function measureInWords(measure: string): string {
  return say(measure.replaceAll('_', ' '));
}

/** The model in words. */
export function modelInWords(
  trial: Trial,
  measure: string,
  blocks: readonly (readonly string[])[],
  terms: readonly TreatmentTerm[],
  errors: readonly string[],
): string {
  const response = `${lowerFirst(say(trial.metadata.variables[0]!.name))} ${measureInWords(measure)}`;
  const fixed = [
    ...blocks.map((names) => listed(names.map((name) => say(name)))),
    ...terms.map(({ name }) => name),
  ].join(' + ');
  const between = listed(errors.map((stratum) => say(`between ${stratum}s`)));
  return say('{response} = {fixed}, with error {between}', { response, fixed, between });
}
