import { formatDate } from '../format/format-date.ts';
import { say } from '../../model/say.ts';
import type { TrialWithFindings } from '../../model/library.ts';

/** A trial as the list of trials shows it; the texts are also what the list is filtered by. */
export interface ListedTrial {
  id: string;
  title: string;
  crop: string;
  season: string;
  /** Sorts by year, then by the last day known. */
  seasonOrder: string;
  setting: string;
  design: string;
  plants: number;
  status: string;
  /** Where a trial of another site is published; null for the site's own. */
  origin: { title: string; page: string; gathered: string } | null;
}

/** Every trial of the library, in its order. */
export function listedTrials(trials: readonly TrialWithFindings[]): ListedTrial[] {
  return trials.map(({ trial: { id, metadata, positions, origin } }) => {
    const { crop, season, site, design, dates = {}, title, status } = metadata;
    const last = dates.cuts?.at(-1) ?? dates.transplanted ?? dates.sown ?? '';
    return {
      id,
      title,
      crop: crop.name,
      season: `${say(season.name)} ${season.year}`,
      seasonOrder: `${season.year} ${last}`,
      setting: say(site.setting),
      // It is named after the letters: in English it keeps its capital.
      design: say(design.arrangement).replace(/^latin /, 'Latin '),
      plants: positions.reduce((total, position) => total + position.plants, 0),
      status,
      origin: origin
        ? { title: origin.title, page: origin.page, gathered: formatDate(origin.gathered) }
        : null,
    };
  });
}

/** The values of one column, each once, in alphabetical order (seasons newest first). */
export function valuesOf(
  trials: readonly ListedTrial[],
  key: 'crop' | 'season' | 'setting' | 'design',
): string[] {
  if (key !== 'season')
    return [...new Set(trials.map((trial) => trial[key]))].sort((a, b) => (a < b ? -1 : 1));
  const newestFirst = [...trials].sort((a, b) => (a.seasonOrder > b.seasonOrder ? -1 : 1));
  return [...new Set(newestFirst.map(({ season }) => season))];
}
