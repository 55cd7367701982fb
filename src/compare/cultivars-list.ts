import { formatPercent } from '../compute/format/format-percent.ts';
import { noNumber } from '../compute/tables/page-table.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { TrialWithFindings } from '../model/library.ts';
import { besideCheck } from './beside-check.ts';
import type { TriedCultivar } from './tried-cultivars.ts';
import { say } from '../model/say.ts';

/** A cultivar as the list of cultivars shows it; the texts are also what the list is sorted by. */
export interface ListedCultivar {
  id: string;
  name: string;
  crop: string;
  trials: number;
  /** First and last season, or none. */
  seasons: string;
  /** Sorts by the last season. */
  seasonOrder: string;
  besideCheck: string;
  /** Adjusted mean in percent of the check's; -1 where it is not compared with it, so that it sorts last. */
  percent: number;
}

/** Every cultivar with what a comparison of its crop says of it. */
export function listedCultivars(
  cultivars: readonly TriedCultivar[],
  comparisonOf: (species: string) => { crop: string; entry: Seasons | null } | null,
): ListedCultivar[] {
  return cultivars.map(({ id, cultivar, name, species, trials }) => {
    const comparison = species === null ? null : comparisonOf(species);
    // What is planned has not grown yet.
    const grown = trials.filter(({ trial }) => trial.metadata.status !== 'planned');
    const inOrder = grown.sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : 1));
    const seasons = [...new Set(inOrder.map(seasonOf))];
    return {
      id,
      name,
      crop: comparison?.crop ?? species ?? noNumber,
      trials: grown.length,
      seasons:
        seasons.length < 2
          ? (seasons[0] ?? say('not yet grown'))
          : say('{from} to {to}', { from: seasons[0]!, to: seasons.at(-1)! }),
      seasonOrder: inOrder.length === 0 ? '' : orderOf(inOrder.at(-1)!),
      ...besideCheckInWords(comparison?.entry ?? null, cultivar),
    };
  });
}

const seasonOf = ({ trial: { metadata } }: TrialWithFindings) =>
  `${say(metadata.season.name)} ${String(metadata.season.year)}`;

const orderOf = ({ trial: { metadata } }: TrialWithFindings) =>
  `${String(metadata.season.year)} ${metadata.dates?.cuts?.at(-1) ?? ''}`;

function besideCheckInWords(
  entry: Seasons | null,
  cultivar: string,
): Pick<ListedCultivar, 'besideCheck' | 'percent'> {
  if (!entry?.adjusted_means.some((mean) => mean.cultivar === cultivar)) {
    return { besideCheck: noNumber, percent: -1 };
  }
  const beside = besideCheck(entry, cultivar);
  switch (beside.kind) {
    case 'the check':
      return { besideCheck: say('the check'), percent: 100 };
    case 'no check':
      return { besideCheck: say('no check named'), percent: -1 };
    case 'not linked':
      return { besideCheck: say('never stood beside it'), percent: -1 };
    case 'not compared':
      return { besideCheck: say('not compared'), percent: -1 };
    default: {
      const told = beside.kind === 'not told apart' ? 'not told apart' : beside.kind;
      const share = beside.percent === null ? '' : `${formatPercent(beside.percent, 0)}, `;
      return { besideCheck: `${share}${say(told)}`, percent: beside.percent ?? -1 };
    }
  }
}
