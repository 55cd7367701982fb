import { measureName } from '../../compute/tables/measures.ts';
import { tellingOf } from '../../compute/words/telling.ts';
import type { Findings } from '../../model/findings.ts';
import type { Cultivar, TrialWithFindings } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import type { Answer } from './judge-claim.ts';

/** What a sentence can say instead of a claim that the trial does not bear out, in the language being written. */
export function honestWords(
  answer: Exclude<Answer, { kind: 'borne out' }>,
  { trial, findings }: TrialWithFindings & { findings: Findings },
  cultivars: readonly Cultivar[],
): string {
  const { pair } = answer;
  if (pair?.estimate === null || pair?.estimate === undefined)
    return say('This trial tested nothing, so that it cannot say which would give more another time.');
  const telling = tellingOf(trial, findings, cultivars);
  const [more, less] = pair.estimate >= 0 ? [pair.a, pair.b] : [pair.b, pair.a];
  const values = {
    more: telling.name(more),
    less: telling.within(less),
    amount: telling.amount(Math.abs(pair.estimate)).metric.replaceAll(/[\u00a0\u202f]/g, ' '),
    per: pair.measure === telling.headline.measure ? telling.per : ` ${measureName(pair.measure)}`,
  };
  if (answer.kind === 'not tested')
    return say(
      '{more} gave {amount}{per} more than {less} here, and whether it would again this trial cannot say.',
      values,
    );
  if (answer.kind === 'not told apart')
    return say(
      '{more} gave {amount}{per} more than {less}, too little for this trial to tell the two apart.',
      values,
    );
  return say('{more} gave {amount}{per} more than {less}.', values);
}
