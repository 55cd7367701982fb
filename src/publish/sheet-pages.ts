import type { FactSheet } from '../model/fact-sheet.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import { releaseDay } from './dataset.ts';
import { describedInWords } from './described-in-words.ts';
import { madeOnce } from './made-once.ts';

/** A fact sheet with its page. */
export interface SheetPage {
  sheet: FactSheet;
  /** The trial whose sheet it is; null for one across trials. */
  own: TrialWithFindings | null;
  /** The address under the site's own path. */
  path: string;
  title: string;
  summary: string;
  /** BCP 47. */
  language: string;
  /** The day of this state of it, ISO 8601. */
  date: string;
  /** Who wrote it, by name; empty where nobody is named. */
  people: readonly string[];
  /** The trials that it speaks of, as far as the site has them, in its order. */
  trials: readonly TrialWithFindings[];
}

/** Every fact sheet's page: those across trials first, newest first, then those of trials in the site's order. */
export const sheetPages = madeOnce('sheet-pages', (library: Library): SheetPage[] => {
  const across = (library.factSheets ?? []).map((sheet) => acrossTrials(sheet, library));
  across.sort((a, b) => (a.date === b.date ? (a.path < b.path ? -1 : 1) : a.date < b.date ? 1 : -1));
  const ofTrials = library.trials.flatMap((item) =>
    (item.trial.factSheets ?? []).map((sheet) => ofTrial(sheet, item, library)),
  );
  return [...across, ...ofTrials];
});

/** The same sheet in its languages, its own first. */
export function inOtherLanguages(page: SheetPage, library: Library): SheetPage[] {
  const stem = stemOf(page);
  return sheetPages(library).filter((each) => stemOf(each) === stem);
}

/** The fact sheet of a trial in the site's language; null where there is none. */
export function sheetOfTrial(item: TrialWithFindings, library: Library): SheetPage | null {
  return sheetPages(library).find(({ own, sheet }) => own === item && sheet.language === null) ?? null;
}

/** The file without its language and ending. */
function stemOf({ sheet }: SheetPage): string {
  const ending = sheet.language === null ? '.mdx' : `.${sheet.language}.mdx`;
  return sheet.file.slice(0, -ending.length);
}

const inLanguage = (tag: string | null): string => (tag === null ? '' : `${tag}/`);

function acrossTrials(sheet: FactSheet, library: Library): SheetPage {
  const { title, summary, date, people } = sheet.frontMatter;
  const ending = sheet.language === null ? '.mdx' : `.${sheet.language}.mdx`;
  const id = sheet.file.split('/').at(-1)!.slice(0, -ending.length);
  return {
    sheet,
    own: null,
    path: `fact-sheets/${id}/${inLanguage(sheet.language)}`,
    title: textOr(title, id),
    summary: textOr(summary, ''),
    language: sheet.language ?? library.site.language ?? 'en',
    date: textOr(date, ''),
    people: namesOf(people),
    trials: sheet.trials.flatMap(({ id: named }) => library.trials.filter(({ trial }) => trial.id === named)),
  };
}

/** What the sheet of a trial leaves out at its top, its trial says. */
function ofTrial(sheet: FactSheet, item: TrialWithFindings, library: Library): SheetPage {
  const { title, summary, date, people } = sheet.frontMatter;
  const { id, metadata } = item.trial;
  const credited = metadata.people.filter(({ part }) => part === 'author' || part === 'grower');
  return {
    sheet,
    own: item,
    path: `trials/${id}/fact-sheet/${inLanguage(sheet.language)}`,
    title: textOr(title, metadata.title),
    summary: textOr(summary, summaryOf(metadata.question, describedInWords(metadata))),
    language: sheet.language ?? library.site.language ?? 'en',
    date: textOr(date, releaseDay(metadata)),
    people: people === undefined ? credited.map(({ name }) => name) : namesOf(people),
    trials: [item],
  };
}

/** A list of sheets has room for the question; a longer summary stands on the trial's page. */
function summaryOf(question: string, described: string): string {
  return described.length <= 300 ? described : question;
}

function textOr(value: unknown, otherwise: string): string {
  return typeof value === 'string' && value.trim() !== '' ? value : otherwise;
}

function namesOf(people: unknown): string[] {
  return Array.isArray(people) ? people.filter((name) => typeof name === 'string') : [];
}

/** The printed sheet's file beside its page, by its paper. */
export function pdfName(paper: 'letter' | 'a4'): string {
  return `fact-sheet-${paper}.pdf`;
}
