import { formatQuantity } from '../../compute/format/format-quantity.ts';
import { digitsAcrossSeasons } from '../../compute/format/digits-across-seasons.ts';
import { eachOf } from '../../compute/words/each-of-measure.ts';
import { listed, type Words } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { besideCheck } from '../beside-check.ts';

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
  const seasons = entry.cells
    .filter((cell) => cell.cultivar === cultivar)
    .map(({ trial }) => entry.trials.find(({ id }) => id === trial)!.season);
  const over = own.trials === 1 ? `In its one trial (${seasons[0]!})` : `Over ${String(own.trials)} trials`;
  const gave: Words = [`${over} ${name(cultivar)} gave `, amount(own.mean), each];
  const set = entry.linked_sets.find((members) => members.includes(cultivar)) ?? [];
  if (set.length < 2) {
    return [...gave, '. No other cultivar stood beside it in any trial, so it is compared with none.'];
  }
  const others = listed(set.filter((member) => member !== cultivar).map(name));
  const beside = besideCheck(entry, cultivar);
  switch (beside.kind) {
    case 'the check':
      return [...gave, `. It is the check that ${others} ${set.length === 2 ? 'is' : 'are'} held against.`];
    case 'no check':
      return [...gave, `. Those trials name no check; it stood beside ${others}.`];
    case 'not linked':
      return [
        ...gave,
        `. No chain of shared trials links it with the check ${name(entry.check!)}; it stood beside ${others}.`,
      ];
    case 'not compared':
      return [
        ...gave,
        `. It is not compared with the check ${name(entry.check!)}: ${lowerFirst(entry.reason)}`,
      ];
    default: {
      const { kind, estimate, lower, upper } = beside;
      const [near, far] = estimate < 0 ? [-upper, -lower] : [lower, upper];
      const apart = kind === 'not told apart' ? ', not enough to tell them apart' : '';
      return [
        `${over} ${name(cultivar)} gave `,
        amount(Math.abs(estimate)),
        `${each} ${estimate < 0 ? 'less' : 'more'} than the check ${name(entry.check!)} (95% interval `,
        amount(near),
        ' to ',
        amount(far),
        `)${apart}.`,
      ];
    }
  }
}

const lowerFirst = (text: string) => text.replace(/^./, (letter) => letter.toLowerCase());
