import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { formatBare } from '../compute/format/format-quantity.ts';
import { unitInBoth } from '../compute/format/unit-in-both.ts';
import { noNumber, type PageTable } from '../compute/tables/page-table.ts';
import { measureAcrossSeasons } from '../compute/words/measure-across-seasons.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { trialsDiffer } from './trials-differ.ts';
import { say } from '../model/say.ts';

const percent = (value: number | null) =>
  value === null ? noNumber : formatPercent(value, 0).replace('%', '');

/** A cultivar's own mean in each trial of a comparison that grew it, beside that trial's check; oldest first. */
export function cultivarSeasonsTable(
  entry: Seasons,
  cultivar: string,
  title: (trial: string) => string,
): PageTable {
  const digits = digitsAcrossSeasons(entry);
  const unit = unitInBoth(entry.unit);
  const cells = entry.cells.filter((cell) => cell.cultivar === cultivar);
  const rows = cells.map(({ trial: id, mean, se, n, percent_of_check: ofCheck }) => {
    const trial = entry.trials.find((each) => each.id === id)!;
    return {
      heading: title(id),
      cells: [
        trial.season,
        say(trial.setting),
        formatBare(mean, entry.unit, digits),
        se === null ? noNumber : formatBare(se, entry.unit, digits + 1),
        String(n),
        percent(ofCheck),
      ],
    };
  });
  const notes = [
    say('n counts replicates where the trial was tested, and plants or pots elsewhere.'),
    ...(cells.some(({ se }) => se === null)
      ? [say('A trial without a standard error did not replicate its cultivars, or grew one alone.')]
      : []),
    ...trialsDiffer(
      entry.trials.filter(({ id }) => cells.some(({ trial }) => trial === id)),
      entry.measure,
    ),
  ];
  return {
    caption: say('{measure}, trial by trial', {
      measure: measureAcrossSeasons(entry).replace(/^./, (letter) => letter.toUpperCase()),
    }),
    columns: [
      { heading: say('Trial'), numeric: false },
      { heading: say('Season'), numeric: false },
      { heading: say('Setting'), numeric: false },
      { heading: say('Mean'), unit, numeric: true },
      { heading: say('Standard error'), unit, numeric: true },
      { heading: 'n', numeric: true },
      { heading: say('Of the check there'), unit: '%', numeric: true },
    ],
    rows,
    notes,
  };
}

/** The adjusted means with the trials taken as a sample beside those with the trials as they were; null without. */
export function randomTrialsTable(entry: Seasons, name: (cultivar: string) => string): PageTable | null {
  if (entry.random_trials.length === 0) return null;
  const digits = digitsAcrossSeasons(entry);
  const unit = unitInBoth(entry.unit);
  const fixed = new Map(entry.adjusted_means.map((mean) => [mean.cultivar, mean]));
  const error = (se: number | null) => (se === null ? noNumber : formatBare(se, entry.unit, digits + 1));
  return {
    caption: say(
      'The trials as they were, and as a sample of trials that might have been (mixed model, REML): the standard errors of the second hold what differs between trials too',
    ),
    columns: [
      { heading: say('Cultivar'), numeric: false },
      { heading: say('These trials'), unit, numeric: true },
      { heading: say('Standard error'), unit, numeric: true },
      { heading: say('Trials as a sample'), unit, numeric: true },
      { heading: say('Standard error'), unit, numeric: true },
    ],
    rows: entry.random_trials.map(({ cultivar, mean, se }) => ({
      heading: name(cultivar),
      cells: [
        formatBare(fixed.get(cultivar)!.mean, entry.unit, digits),
        error(fixed.get(cultivar)!.se),
        formatBare(mean, entry.unit, digits),
        error(se),
      ],
    })),
    notes: [],
  };
}
