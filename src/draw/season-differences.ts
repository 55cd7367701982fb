import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatP } from '../compute/format/format-p.ts';
import { formatQuantity } from '../compute/format/format-quantity.ts';
import { formatRange } from '../compute/format/format-range.ts';
import { measureAcrossSeasons } from '../compute/words/measure-across-seasons.ts';
import type { Figure } from '../model/figure.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { cultivarRows } from './cultivar-rows.ts';
import { differenceFigure, mostDifferences } from './difference-figure.ts';
import { figureId } from './figure-id.ts';
import type { IntervalRow } from './interval-rows.ts';
import { say } from '../model/say.ts';

/** What may be said of a figure of differences. */
export interface SeasonDifferencesOptions {
  /** What the figure's id begins with where a page holds several. */
  id?: string;
  /** Only differences from this cultivar are drawn, it being taken from the others. */
  against?: string | null;
  /** So many differences at most. */
  most?: number;
}

/**
 * The differences of adjusted means with their simultaneous 95% intervals and a line at zero, the higher mean
 * less the lower, a section for each linked set. Null where nothing has an error to be held against.
 */
export function drawSeasonDifferences(
  entry: Seasons,
  name: (cultivar: string) => string,
  options: SeasonDifferencesOptions = {},
): Figure | null {
  const { against = null } = options;
  const digits = digitsAcrossSeasons(entry);
  const { unit } = entry;
  const setOf = new Map(cultivarRows(entry, name).map(({ cultivar, set }) => [cultivar, set]));
  const between = (one: string, other: string) =>
    against === null ? `${name(one)} − ${name(other)}` : name(one);
  const known = entry.differences
    .flatMap(({ a, b, estimate, lower, upper, p_adjusted: p }) => {
      if (lower === null || upper === null || p === null) return [];
      if (against !== null && a !== against && b !== against) return [];
      const turned = against === null ? estimate < 0 : a === against;
      return [
        {
          set: setOf.get(a)!,
          name: turned ? between(b, a) : between(a, b),
          p,
          ...(turned
            ? { centre: -estimate, lower: -upper, upper: -lower }
            : { centre: estimate, lower, upper }),
        },
      ];
    })
    .sort((a, b) => b.centre - a.centre);
  const kept = [...known]
    .sort((a, b) => Math.abs(b.centre) - Math.abs(a.centre))
    .slice(0, options.most ?? mostDifferences)
    .sort((a, b) => a.set - b.set || b.centre - a.centre);
  if (kept.length === 0) return null;
  const severalSets = new Set(known.map(({ set }) => set)).size > 1;
  let last = -1;
  const rows = kept.map(({ set, name: pair, centre, lower, upper, p }): IntervalRow => {
    const begins = set !== last && severalSets;
    last = set;
    return {
      name: pair,
      centre,
      lower,
      upper,
      estimate: formatQuantity(centre, unit, digits, { plus: true }),
      limits: formatRange(lower, upper, unit, digits, { plus: true }),
      aside: formatP(p),
      section: begins
        ? say('Linked set {set} of {count}', { set: set + 1, count: entry.linked_sets.length })
        : null,
    };
  });
  const id = figureId(options.id ?? '', 'season-differences');
  const differences =
    against === null ? say('differences') : say('differences from {cultivar}', { cultivar: name(against) });
  const shown =
    rows.length < known.length
      ? say('the {drawn} largest of {all} {differences}', {
          drawn: rows.length,
          all: known.length,
          differences,
        })
      : differences;
  const words = say('{differences} in {measure} over the trials, with 95% intervals', {
    differences: shown,
    measure: measureAcrossSeasons(entry),
  });
  const title = words.replace(/^./, (letter) => letter.toUpperCase());
  return differenceFigure({ id, title, kind: 'differences' }, rows, unit, digits);
}
