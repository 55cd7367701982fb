import type { Findings } from '../../model/findings.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Trial } from '../../model/trial.ts';
import { againstCheckSentences, pairSentences } from './compared-sentences.ts';
import { mediansInWords, rankSentence } from './rank-sentence.ts';
import { type Telling, tellingOf } from './telling.ts';
import { tell } from './tell.ts';
import { joinWords, type Words } from './words.ts';

/**
 * The trial's finding in one or two plain sentences: what differed and by how much, effect and interval
 * first; where the design supports no test, a description that says it is one.
 */
export function findingSentence(
  trial: Trial,
  findings: Findings,
  cultivars: readonly Cultivar[] = [],
): Words {
  const telling = tellingOf(trial, findings, cultivars);
  const { inference } = telling.headline;
  if (findings.treatments.length < 2) return onlyOne(telling);
  if (inference?.verdict !== 'tested') return described(telling);
  if (inference.anova.length === 0) return rankSentence(telling, inference) ?? described(telling);
  return againstCheckSentences(telling, inference) ?? pairSentences(telling, inference) ?? described(telling);
}

function onlyOne({ findings, headline, name, amount, per }: Telling): Words {
  const [only] = findings.treatments;
  const mean = only ? (headline.summaryOf(only)?.mean ?? null) : null;
  if (only === undefined || mean === null)
    return tell('Nothing is known of it, so there is nothing to say yet.');
  if (Object.keys(only.treatment).length === 0)
    return tell('All plants gave {amount}{per} on average.', { amount: amount(mean), per });
  return tell('{name} gave {amount}{per} on average.', {
    name: name(only.treatment),
    amount: amount(mean),
    per,
  });
}

/** The highest and the lowest on average, said of these units alone. */
function described(telling: Telling): Words {
  const { trial, findings, headline, name, within, amounts, per, ofWeights } = telling;
  if (trial.metadata.variables[0]?.kind === 'scored') return describedByMedians(telling);
  const means = findings.treatments
    .flatMap((each) => {
      const mean = headline.summaryOf(each)?.mean ?? null;
      return mean === null ? [] : [{ name: name(each.treatment), within: within(each.treatment), mean }];
    })
    .sort((a, b) => b.mean - a.mean);
  const [most, least] = [means[0], means.at(-1)];
  if (most === undefined || least === undefined || most === least) {
    return tell('Too little is known to set treatments beside one another.');
  }
  const [highest, lowest] = amounts(most.mean, least.mean);
  const values = { most: most.name, highest, per, least: least.within, lowest };
  if (most.mean === least.mean)
    return testingNothing(tell('All treatments gave {highest}{per} on average.', values));
  return testingNothing(
    ofWeights
      ? tell('{most} weighed most, {highest}{per} on average, and {least} least, {lowest}.', values)
      : tell('{most} was highest, {highest}{per} on average, and {least} lowest, {lowest}.', values),
  );
}

function testingNothing(found: Words): Words {
  const description = tell(
    'This describes what was found and tests nothing: another time the order may differ.',
  );
  return joinWords([found, description], ' ');
}

/** Scores are marks, not amounts: their medians are told. */
function describedByMedians({ findings, headline, name, within }: Telling): Words {
  const known = findings.treatments.flatMap(({ treatment, ...each }) => {
    const median = headline.summaryOf({ treatment, ...each })?.median ?? null;
    return median === null ? [] : [{ treatment, median }];
  });
  const medians = known.length < 2 ? null : mediansInWords(known, { name, within });
  return medians === null
    ? tell('Too little is known to set treatments beside one another.')
    : testingNothing([`${medians}.`]);
}
