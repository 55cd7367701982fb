import { joinAlike } from '../check/join-alike.ts';
import type { Library } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import { sheetPages } from '../publish/sheet-pages.ts';
import { type FilesPublished, fileLinkProblems } from './check-file-links.ts';
import { claimProblems } from './claims/sheet-claims.ts';
import { readingNotes } from './reading/reading-notes.ts';
import { resolveAll } from './resolved-sheets.ts';

/** What a library's sheets are checked beside. */
export interface SheetCheck {
  /** Trials that are there and were left out of the library, for errors of their own. */
  faulty?: ReadonlySet<string>;
  /** True where the library is one trial's folder, so that nothing is known of others. */
  alone?: boolean;
  /** What the site will publish; absent where that is not known, as in a browser. */
  files?: FilesPublished;
}

/** Every problem of a library's fact sheets that only the findings can tell, in the order of the sheets. */
export function checkSheets(
  library: Library,
  { faulty = new Set(), alone = false, files }: SheetCheck = {},
): Problem[] {
  const ofComponents = [...resolveAll(library, faulty, alone).values()].flatMap(({ problems }) => problems);
  const ofWords = sheetPages(library).flatMap((page) => [
    ...claimProblems(page, library),
    ...(files === undefined ? [] : fileLinkProblems(page, library, faulty, alone, files)),
    ...readingNotes(page),
  ]);
  return joinAlike([...ofComponents, ...ofWords]);
}
