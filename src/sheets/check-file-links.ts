import { collector } from '../check/collect.ts';
import { didYouMean, nearest } from '../check/nearest.ts';
import sheetUnknownName from '../check/rules/sheet-unknown-name.ts';
import { showText } from '../check/show-value.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { pdfName, type SheetPage, sheetPages } from '../publish/sheet-pages.ts';
import { addressRead } from './address-read.ts';
import { linksOf } from './links-of.ts';

/** The paths from the site's root on of the files that it publishes: of a trial's dataset, or (null) across trials. */
export type FilesPublished = (item: TrialWithFindings | null) => readonly string[];

/** What a site has beside its pages and its data, which no sheet asks for by a trial's name. */
const standing = /^(?:assets\/.*|icon[^/]*|feed\.xml|sitemap\.xml|robots\.txt)$/;

/**
 * Every link of a sheet to a file that this site does not publish. Files of trials that have errors of their own
 * are not looked for, and where a trial's folder is checked alone those of others are not.
 */
export function fileLinkProblems(
  { sheet, own }: SheetPage,
  library: Library,
  faulty: ReadonlySet<string>,
  alone: boolean,
  files: FilesPublished,
): Problem[] {
  const { report, problems } = collector('');
  for (const { to, line, column } of linksOf(sheet.blocks)) {
    const path = addressRead(to.replace(/[?#].*$/, '').slice(1));
    if (!to.startsWith('/') || !/\.[a-z0-9]+$/i.test(path) || standing.test(path)) continue;
    const id = /^(?:data|trials)\/([^/]+)\//.exec(path)?.[1];
    if (id === undefined ? alone : faulty.has(id) || (alone && id !== own?.trial.id)) continue;
    const item = library.trials.find(({ trial }) => trial.id === id) ?? null;
    if (isBesidePage(path, item, library)) continue;
    const known = id !== undefined && item === null ? [] : files(item);
    if (known.includes(path)) continue;
    const message = say('this site publishes no file {file}', { file: showText(to) });
    report(sheetUnknownName, {
      file: sheet.file,
      place: { line, column },
      found: to,
      message: message + meant(path, id, item, known, library),
    });
  }
  return problems;
}

/** The file of the same name in the dataset, else the name most alike, else where the files are listed. */
function meant(
  path: string,
  id: string | undefined,
  item: TrialWithFindings | null,
  known: readonly string[],
  library: Library,
): string {
  if (id !== undefined && item === null) {
    const ids = library.trials.map(({ trial }) => trial.id);
    return didYouMean(id, ids);
  }
  // By the names alone: the folder before them is as long, and would make any two alike.
  const nameOf = (file: string): string => file.split('/').at(-1)!;
  const stemOf = (file: string): string => nameOf(file).replace(/\.[^.]+$/, '');
  const best = nearest(nameOf(path), known.map(nameOf));
  const file =
    known.find((each) => nameOf(each) === best) ?? known.find((each) => stemOf(each) === stemOf(path));
  if (file !== undefined) return say('; did you mean "{name}"?', { name: `/${file}` });
  const page = item === null ? '/data/' : `/data/${item.trial.id}/`;
  return known.length === 0 ? '' : say('; the page {page} lists the files', { page });
}

/** A photograph as it is published, or the printed sheet, which lie beside their pages. */
function isBesidePage(path: string, item: TrialWithFindings | null, library: Library): boolean {
  const photograph = /\/photos\/(\d+)-\d+\.(?:webp|jpg)$/.exec(path)?.[1];
  if (photograph !== undefined && item !== null)
    return path.startsWith('trials/') && Number(photograph) <= (item.trial.metadata.photos ?? []).length;
  const sheets = sheetPages(library).flatMap((page) => [
    page.path + pdfName('letter'),
    page.path + pdfName('a4'),
  ]);
  return sheets.includes(path);
}
