import type { Factor, Trial } from '../../model/trial.ts';
import type { UnitStratum } from '../experimental-unit.ts';
import type { TreatmentTerm } from './analysis-design.ts';

/** Why a term is not tested, in a grower's words, and what would have made it testable. */
export function withoutReplicates(trial: Trial, term: TreatmentTerm): string {
  const factor = inWords(trial, term);
  const unit = term.unit;
  return (
    `Each ${factor} had one ${unit} of its own, so ${factor} and ${unit} cannot be told apart: ` +
    `what differs between ${unit}s for any other reason would show as well. The numbers describe these ${unit}s ` +
    `and test nothing. With at least two ${unit}s for each ${factor}, drawn by lot, it could have been tested.`
  );
}

/** Where replicates are there, but blocks and the terms fitted before use them up. */
export function withoutErrorDegrees(trial: Trial, term: TreatmentTerm): string {
  const factor = inWords(trial, term);
  return (
    `Once blocks and treatments are allowed for, no ${term.unit}s are left over to show how much ${term.unit}s ` +
    `differ by themselves, so ${factor} cannot be tested. One more ${term.unit} for each ${factor}, or one more block, would have made it testable.`
  );
}

export function confoundedWithBlock(trial: Trial, term: TreatmentTerm): string {
  const factor = inWords(trial, term);
  return (
    `Within a block ${factor} never varies, or varies only together with something fitted before it, so ${factor} and block cannot be told apart. ` +
    `Had every block held each ${factor}, it could have been tested.`
  );
}

export const nothingVaries =
  'Units treated alike weighed alike to the last digit, so there is no error to test against. The numbers stand as they are.';

export const wholePots = 'Pots were weighed whole, so nothing is known of single plants.';

export const scoresOfSeveralStrata =
  'Scores are compared by their ranks, and for units within units there is no plain test on ranks. The medians stand as they are.';

export const scoresAreNotSummed =
  'Scores are marks, not amounts: those of several plants of a pot are not summed.';

export const tooFewTreatments =
  'Fewer than two treatments have a known weight, so there is nothing to compare.';

export const notRandomised =
  'Lots were not drawn: a test supposes that chance alone decided which unit had which treatment, so read every p and interval here with that in mind.';

/** The factors of a term by name: "cultivar", "cultivar and strength". */
export function inWords(trial: Trial, term: Pick<TreatmentTerm, 'factors'>): string {
  const factors = trial.metadata.factors ?? [];
  const name = (id: string) => lowerFirst(factors.find((factor: Factor) => factor.id === id)?.name ?? id);
  return term.factors.map(name).join(' and ');
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** "per pot", "per plant set", "per plant harvested". */
export function measureInWords(measure: string): string {
  return measure.replaceAll('_', ' ');
}

/** The model in words. */
export function modelInWords(
  trial: Trial,
  measure: string,
  blocks: readonly (readonly string[])[],
  terms: readonly TreatmentTerm[],
  errors: readonly string[],
): string {
  const response = `${lowerFirst(trial.metadata.variables[0]!.name)} ${measureInWords(measure)}`;
  const fixed = [...blocks.map((names) => names.join(' and ')), ...terms.map(({ name }) => name)].join(' + ');
  return `${response} = ${fixed}, with error between ${errors.map(plural).join(' and between ')}`;
}

function plural(stratum: string): string {
  return `${stratum}s`;
}

export function unitsInWords(unit: UnitStratum, count: number): string {
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
}
