import type { Choice, RowOrder } from '../../compare/choice/choice.ts';
import { shownAgainst } from '../../compare/pairs-shown.ts';
import {
  adjustedMeansTable,
  cellsTable,
  differencesTable,
  steadinessTable,
  trialsTable,
} from '../../compare/season-tables.ts';
import { interactionSentence } from '../../compare/words/interaction-sentence.ts';
import { restsOnTrials } from '../../compare/words/rests-on-trials.ts';
import { seasonSentence } from '../../compare/words/season-sentence.ts';
import { steadinessSentences } from '../../compare/words/steadiness-sentences.ts';
import { type CultivarMeansOptions, drawCultivarMeans } from '../../draw/cultivar-means.ts';
import { cultivarRows, firstRows } from '../../draw/cultivar-rows.ts';
import { drawSeasonDifferences } from '../../draw/season-differences.ts';
import { drawSteadinessPlots } from '../../draw/steadiness-plots.ts';
import type { Figure } from '../../model/figure.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { say } from '../../model/say.ts';
import { figureHtml, foldedHtml } from '../figure-html.ts';
import { href } from '../href.ts';
import { escapeHtml, type FirstUnits, tableHtml, wordsHtml } from '../html.ts';

/** A comparison with how it is to be shown. */
export interface ShownComparison {
  entry: Seasons;
  name: (cultivar: string) => string;
  title: (trial: string) => string;
  /** What the ids within begin with: unique in the page. */
  id: string;
  first: FirstUnits;
  /** Sentences on what was chosen, below what the answer rests on. */
  chosen?: readonly string[];
  order?: RowOrder;
  against?: Choice['against'];
  /** Every row and column, also where there are more than can be looked over. */
  everything?: boolean;
  own?: NonNullable<CultivarMeansOptions['own']>;
  /** How what is folded away is made; where absent it is there from the start. */
  folded?: (summary: string, content: () => string) => string;
  /** What may be done with a figure. */
  tools?: (figure: Figure) => string;
}

/** More means than this cannot be looked over: then so many rows, trials and plots are shown at first. */
const mostCells = 1000;
const first = { rows: 8, newest: 12, pairs: 8, plots: 3 } as const;
/** A longer table of trials is folded away. */
const mostTrials = 24;

const methods = [
  ['linked-sets', 'linked sets'],
  ['seasons-compared', 'cultivar and trial'],
  ['tukey-kramer', 'Tukey–Kramer'],
  ['letters', 'letters'],
  ['steadiness', 'steadiness'],
] as const;

/** Whether only a part is drawn at first. */
export function isLarge({ cells }: Seasons): boolean {
  return cells.length > mostCells;
}

/**
 * All that is said of a crop's cultivars across seasons by one measure, in parts that follow one another: the
 * answer first, working after. The pages as published and the script that compares anew both take it from here.
 */
export const comparisonParts: Readonly<Record<ComparisonPart, (shown: ShownComparison) => string>> = {
  answer,
  means,
  trials,
  pairs,
  steadiness,
};

export type ComparisonPart = 'answer' | 'means' | 'trials' | 'pairs' | 'steadiness';

/** The whole of it, each part in an element that names it. */
export function comparisonHtml(shown: ShownComparison): string {
  return Object.entries(comparisonParts)
    .map(([part, html]) => `<div data-part="${part}">${html(shown)}</div>`)
    .join('');
}

const paragraphs = (sentences: readonly string[]) =>
  sentences.map((sentence) => `<p>${escapeHtml(sentence)}</p>`).join('');

function answer({ entry, name, first: units, chosen = [] }: ShownComparison): string {
  return (
    `<p class="finding">${wordsHtml(seasonSentence(entry, name), units)}</p>` +
    paragraphs([...restsOnTrials(entry, name), ...chosen])
  );
}

function means(shown: ShownComparison): string {
  const { entry, name, id, order = 'mean', own } = shown;
  const figure = drawCultivarMeans(entry, name, {
    id,
    order,
    ...(own === undefined ? {} : { own }),
    ...(onlyFirst(shown) ? { most: first.rows } : {}),
  });
  // Where nothing is compared a mean has nothing to be read by: the trials' own stand below.
  const table = entry.verdict === 'compared' ? tableHtml(adjustedMeansTable(entry, name), shown.first) : '';
  return drawn(shown, figure) + table;
}

function trials(shown: ShownComparison): string {
  const { entry, name, title, id, order } = shown;
  const part = onlyFirst(shown);
  const rows = part ? firstRows(cultivarRows(entry, name, order), entry.check, first.rows) : null;
  const cells = cellsTable(
    entry,
    name,
    rows === null ? {} : { cultivars: new Set(rows.map(({ cultivar }) => cultivar)), newest: first.newest },
  );
  const table = trialsTable(entry, title);
  const conditions =
    entry.trials.length > mostTrials
      ? paragraphs(table.notes) +
        (shown.folded ?? foldedHtml)(
          say('The {count} trials, one by one', { count: entry.trials.length }),
          () => tableHtml({ ...table, notes: [] }, shown.first),
        )
      : tableHtml(table, shown.first);
  return (
    `<h3 id="${id}-trials">${escapeHtml(say('Which trial grew what, and how the trials differ'))}</h3>` +
    tableHtml(cells, shown.first) +
    (part ? `<p class="note">${escapeHtml(say('The file of the means holds all of them.'))}</p>` : '') +
    conditions
  );
}

function pairs(shown: ShownComparison): string {
  const { entry, name, id } = shown;
  if (entry.verdict !== 'compared') return '';
  const against = shownAgainst(entry, shown.against ?? null);
  const figure = drawSeasonDifferences(entry, name, {
    id,
    against,
    ...(onlyFirst(shown) ? { most: first.pairs } : {}),
  });
  const known = entry.differences.filter(({ p_adjusted: p }) => p !== null).length;
  const drawnRows = figure?.table.rows.length ?? 0;
  const every =
    known > drawnRows
      ? (shown.folded ?? foldedHtml)(say('Every pair, {count} in all', { count: known }), () =>
          tableHtml(differencesTable(entry, name)!, shown.first),
        )
      : '';
  return (
    `<h3 id="${id}-pairs">${escapeHtml(say('Differences between cultivars'))}</h3>` +
    (figure ? drawn(shown, figure) : '') +
    every +
    paragraphs([interactionSentence(entry)])
  );
}

function steadiness(shown: ShownComparison): string {
  const { entry, name, id } = shown;
  if (entry.verdict !== 'compared') return '';
  const table = steadinessTable(entry, name);
  const plots = drawSteadinessPlots(entry, name, { id, ...(onlyFirst(shown) ? { most: first.plots } : {}) });
  const links = methods.map(
    ([method, words]) => `<a href="${href(`methods/#${method}`)}">${escapeHtml(say(words))}</a>`,
  );
  return (
    `<h3 id="${id}-steadiness">${escapeHtml(say('How steady each was'))}</h3>` +
    paragraphs(steadinessSentences(entry, name)) +
    (table === null
      ? ''
      : (plots.length < table.rows.length
          ? paragraphs([
              say('Drawn are the {some} of {all} that depart the most from the others.', {
                some: plots.length,
                all: table.rows.length,
              }),
            ])
          : '') +
        `<div class="maps">${plots.map((figure) => drawn(shown, figure, true)).join('')}</div>` +
        tableHtml(table, shown.first)) +
    `<p class="note">${escapeHtml(say('How these are reckoned:'))} ${links.join(', ')}.</p>`
  );
}

function onlyFirst({ entry, everything = false }: ShownComparison): boolean {
  return isLarge(entry) && !everything;
}

function drawn({ folded, tools }: ShownComparison, figure: Figure, brief = false): string {
  return figureHtml(figure, {
    brief,
    ...(tools === undefined ? {} : { tools: tools(figure) }),
    ...(folded === undefined ? {} : { folded }),
  });
}
