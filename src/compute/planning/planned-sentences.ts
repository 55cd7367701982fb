import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatPercent } from '../format/format-percent.ts';
import type { LevelNames } from '../format/level-names.ts';
import { inWords } from '../inference/verdict-words.ts';
import { termName } from '../tables/inference/names-of.ts';
import type { PlannedAnalysis, PlannedTerm } from './planned-analysis.ts';

/** What a layout will be able to tell, and what it cannot, a sentence each. */
export function plannedSentences(
  trial: Trial,
  names: LevelNames,
  { units, terms, variation }: PlannedAnalysis,
): string[] {
  const allotted = units.map(({ factor, experimental_unit: unit, replicates }) =>
    say(`{factor} is allotted to ${unit}s, so the replicates will be ${unit}s: {each}.`, {
      factor: termName(trial, factor),
      each: replicatesInWords(factor, replicates, names),
    }),
  );
  const told = terms.some(({ detectablePercent }) => detectablePercent !== null);
  const reckoned = say('This takes a coefficient of variation of {cv} between units: {from}.', {
    cv: formatPercent(variation.percent, 1),
    from: variation.from,
  });
  return [...allotted, ...terms.map((term) => sentenceOf(trial, term)), ...(told ? [reckoned] : [])];
}

function replicatesInWords(
  factor: string,
  replicates: Readonly<Record<string, number>>,
  names: LevelNames,
): string {
  const counts = Object.entries(replicates);
  const [first] = counts;
  return first !== undefined && counts.every(([, count]) => count === first[1])
    ? say('{count} for each level', { count: first[1] })
    : counts.map(([level, count]) => `${names(factor, level)} ${String(count)}`).join(', ');
}

function sentenceOf(trial: Trial, { term, errorDf, replicates, detectablePercent }: PlannedTerm): string {
  const values = {
    factor: inWords(trial, term),
    unit: say(term.unit),
    units: say(`${term.unit}s`),
    df: formatNumber(errorDf, 0),
  };
  if (errorDf < 1) {
    return replicates !== null && replicates < 2
      ? say(
          'Each {factor} has one {unit} of its own, so {factor} and {unit} will not be told apart: the trial will describe these {units} and test nothing.',
          values,
        )
      : say(
          'No {units} are left over to show how much {units} differ by themselves, so {factor} will not be tested.',
          values,
        );
  }
  if (detectablePercent === null) {
    return say(
      'Whether they act together ({factor}) will be tested, on {df} error degrees of freedom.',
      values,
    );
  }
  return say(
    'On {df} error degrees of freedom, a difference of {difference} of the mean between two levels of {factor} would be found in 8 trials of 10.',
    { ...values, difference: formatPercent(detectablePercent, 0) },
  );
}
