import { formatQuantity } from '../../compute/format/format-quantity.ts';
import { digitsAcrossSeasons } from '../../compute/format/digits-across-seasons.ts';
import { eachOf } from '../../compute/words/each-of-measure.ts';
import { listed, type Words } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { besideCheck } from '../beside-check.ts';
import { tell } from '../../compute/words/tell.ts';
import { say } from '../../model/say.ts';

/** How a cultivar did over its trials beside the check, or why it is compared with none; null where it has no mean. */
export function cultivarSentence(
  entry: Seasons,
  cultivar: string,
  name: (cultivar: string) => string,
): Words | null {
  const own = entry.adjusted_means.find((mean) => mean.cultivar === cultivar);
  if (!own) return null;
  const digits = digitsAcrossSeasons(entry);
  const amount = (value: number) => formatQuantity(value, entry.unit, digits);
  const each = eachOf(entry.measure);
  const grewIt = entry.cells
    .filter((cell) => cell.cultivar === cultivar)
    .map(({ trial }) => entry.trials.find(({ id }) => id === trial)!);
  const over = overTrials(grewIt);
  const gave = tell('{over} {cultivar} gave {amount}', {
    over,
    cultivar: name(cultivar),
    amount: [amount(own.mean), each],
  });
  const set = entry.linked_sets.find((members) => members.includes(cultivar)) ?? [];
  if (set.length < 2) {
    return [
      ...gave,
      '. ',
      say('No other cultivar stood beside it in any trial, so it is compared with none.'),
    ];
  }
  const others = listed(set.filter((member) => member !== cultivar).map(name));
  const beside = besideCheck(entry, cultivar);
  switch (beside.kind) {
    case 'the check':
      return [
        ...gave,
        '. ',
        say(
          set.length === 2
            ? 'It is the check that {others} is held against.'
            : 'It is the check that {others} are held against.',
          { others },
        ),
      ];
    case 'no check':
      return [...gave, '. ', say('Those trials name no check; it stood beside {others}.', { others })];
    case 'not linked':
      return [
        ...gave,
        '. ',
        say('No chain of shared trials links it with the check {check}; it stood beside {others}.', {
          check: name(entry.check!),
          others,
        }),
      ];
    case 'not compared':
      return [
        ...gave,
        '. ',
        say('It is not compared with the check {check}: {reason}', {
          check: name(entry.check!),
          reason: lowerFirst(entry.reason),
        }),
      ];
    default: {
      const { kind, estimate, lower, upper } = beside;
      // A trial that grew it alone tells nothing of a difference.
      const met = grewIt.filter(({ cultivars }) => cultivars > 1);
      const [near, far] = estimate < 0 ? [-upper, -lower] : [lower, upper];
      const values = {
        over: overTrials(met),
        cultivar: name(cultivar),
        amount: [amount(Math.abs(estimate)), each],
        check: name(entry.check!),
        near: amount(near),
        far: amount(far),
        apart: kind === 'not told apart' ? say(', not enough to tell them apart') : '',
      };
      return tell(
        estimate < 0
          ? '{over} {cultivar} gave {amount} less than the check {check} (95% interval {near} to {far}){apart}.'
          : '{over} {cultivar} gave {amount} more than the check {check} (95% interval {near} to {far}){apart}.',
        values,
      );
    }
  }
}

function overTrials(trials: readonly { season: string }[]): string {
  return trials.length === 1
    ? say('In its one trial ({season})', { season: trials[0]!.season })
    : say('Over {count} trials', { count: trials.length });
}

const lowerFirst = (text: string) => text.replace(/^./, (letter) => letter.toLowerCase());
