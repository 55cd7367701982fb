import { listedCultivars } from '../compare/cultivars-list.ts';
import { cultivarRemarks } from '../compare/cultivar-remarks.ts';
import { cultivarFactor } from '../compare/cultivar-identity.ts';
import { cultivarSentence } from '../compare/words/cultivar-sentence.ts';
import { seasonSentence } from '../compare/words/season-sentence.ts';
import type { TriedCultivar } from '../compare/tried-cultivars.ts';
import { remarksOf } from '../compute/growing/remarks-of.ts';
import { findingSentence } from '../compute/words/finding-sentence.ts';
import { plainText, type Words } from '../compute/words/words.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import { say } from '../model/say.ts';
import type { SearchRecord } from '../model/search.ts';
import { type Crop, cropsOf, cultivarsOf, identityOf } from './crop-comparisons.ts';
import { madeOnce } from './made-once.ts';
import { type SheetPage, sheetPages } from './sheet-pages.ts';
import { sheetTexts } from './sheet-text.ts';

/**
 * What the search finds, each page once: its title, its question or sentence, the names of its cultivars with
 * their synonyms, and the remarks. Always in the same order, so that the index is alike at each build.
 */
export function searchRecords(library: Library): SearchRecord[] {
  return [
    ...library.trials.map((item) => trialRecord(item, library)),
    ...cultivarsOf(library).map((cultivar) => cultivarRecord(cultivar, library)),
    ...cropsOf(library).map((crop) => cropRecord(crop)),
    ...sheetPages(library).map((page) => sheetRecord(page)),
  ];
}

function trialRecord(item: TrialWithFindings, library: Library): SearchRecord {
  const { trial, findings } = item;
  const { title, question, summary = '', crop, season, site, design, events = [] } = trial.metadata;
  return {
    kind: 'trial',
    path: `trials/${trial.id}/`,
    title,
    season: seasonOf(season),
    sentence: inBoth(findings ? findingSentence(trial, findings, library.cultivars) : [question]),
    texts: texts([
      question,
      crop.name,
      crop.species,
      ...cultivarNames(item, library),
      seasonOf(season),
      site.name,
      site.setting,
      design.arrangement,
      summary,
      ...events.map(({ what }) => what),
      ...remarksOf(trial).map(({ text }) => text),
      ...trial.readings.map(({ remark }) => remark),
    ]),
  };
}

const synonymsOf = madeOnce(
  'synonyms',
  (library: Library) => new Map(cultivarsOf(library).map(({ cultivar, synonyms }) => [cultivar, synonyms])),
);

/** The names of all that a trial grew, with their synonyms. */
function cultivarNames({ trial }: TrialWithFindings, library: Library): string[] {
  const { of, name } = identityOf(library);
  const factor = cultivarFactor(trial);
  const grown = factor ? factor.levels.map(({ id }) => of(trial, id)) : [of(trial)];
  return grown
    .filter((cultivar) => cultivar !== null)
    .flatMap((cultivar) => [name(cultivar), ...(synonymsOf(library).get(cultivar) ?? [])]);
}

const isOwn = ({ trial }: TrialWithFindings): boolean => trial.origin === undefined;

function cultivarRecord(whole: TriedCultivar, library: Library): SearchRecord {
  const { cultivar, id, name, species, synonyms, note, trials } = whole;
  const { name: nameOf, of } = identityOf(library);
  const crop = cropsOf(library).find((each) => each.species === species);
  const entry = crop?.comparisons
    .map((comparison) => comparison.entry)
    .find(({ adjusted_means }) => adjusted_means.some((mean) => mean.cultivar === cultivar));
  const [listed] = listedCultivars([whole], () => null);
  return {
    kind: 'cultivar',
    path: `cultivars/${id}/`,
    title: name,
    season: listed?.seasons ?? '',
    sentence: inBoth((entry && cultivarSentence(entry, cultivar, nameOf)) ?? [note]),
    texts: texts([
      ...synonyms,
      crop?.name,
      species ?? undefined,
      note,
      ...trials
        .filter(isOwn)
        .flatMap(({ trial }) => cultivarRemarks(trial, cultivar, of).map(({ text }) => text)),
    ]),
  };
}

function cropRecord({ id, name, species, trials, comparisons }: Crop): SearchRecord {
  const [first] = comparisons;
  const years = trials.map(({ trial }) => trial.metadata.season.year);
  const [from, to] = [Math.min(...years), Math.max(...years)];
  return {
    kind: 'crop',
    path: `crops/${id}/`,
    title: name,
    season: from === to ? String(from) : say('{from} to {to}', { from, to }),
    sentence: inBoth(first ? seasonSentence(first.entry, first.name) : []),
    texts: texts([species]),
  };
}

function sheetRecord({ sheet, own, path, title, summary }: SheetPage): SearchRecord {
  return {
    kind: 'fact sheet',
    path,
    title,
    season: own === null ? '' : seasonOf(own.trial.metadata.season),
    sentence: inBoth([summary]),
    texts: texts(sheetTexts(sheet)),
  };
}

const seasonOf = ({ name, year }: { name: string; year: number }) => `${say(name)} ${String(year)}`;

function inBoth(words: Words): SearchRecord['sentence'] {
  const us = words.map((piece) => (typeof piece === 'string' ? piece : (piece.us ?? piece.metric))).join('');
  return { metric: plainText(words), us };
}

/** Each text once: a remark written beside forty plants says no more than one. */
function texts(all: readonly (string | undefined)[]): string[] {
  return [...new Set(all.filter((text) => text !== undefined))].filter((text) => text !== '');
}
