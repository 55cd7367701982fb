import { collector } from '../check/collect.ts';
import { didYouMean } from '../check/nearest.ts';
import sheetUnknownName from '../check/rules/sheet-unknown-name.ts';
import { showText } from '../check/show-value.ts';
import { computeFindings } from '../compute/findings.ts';
import type { FactSheet } from '../model/fact-sheet.ts';
import { inLanguage, language as siteLanguage, languageOf } from '../model/language.ts';
import type { Library } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { madeOnce } from '../publish/made-once.ts';
import { sheetPages } from '../publish/sheet-pages.ts';
import { knownTrials } from './asked-trial.ts';
import type { SheetContext } from './component.ts';
import { type ResolvedSheet, resolveSheet } from './resolve-sheet.ts';

/** Every sheet of a library, filled in from the findings: by the check, and again by the pages, without a second time. */
export const resolvedSheets = madeOnce('resolved-sheets', (library: Library) =>
  resolveAll(library, noTrials, false),
);

const noTrials: ReadonlySet<string> = new Set();

/**
 * Checks and fills in every sheet of a library, each in its own language.
 *
 * @param faulty trials that are there and not in the library, for errors of their own
 * @param alone true where the library is one trial's folder and no more
 */
export function resolveAll(
  library: Library,
  faulty: ReadonlySet<string>,
  alone: boolean,
): ReadonlyMap<FactSheet, ResolvedSheet> {
  return new Map(
    sheetPages(library).map(({ sheet, own, language }) => {
      const trials = own === null ? sheet.trials.map(({ id }) => id) : [own.trial.id];
      const context = { sheet, library, own, trials, faulty, alone };
      const isOfSite = languageOf(language) === siteLanguage();
      const resolved = isOfSite
        ? resolveSheet(context)
        : inLanguage(languageOf(language), () =>
            resolveSheet({ ...context, library: withFindingsAnew(library, trials) }),
          );
      // What is wrong with a sheet in another language is told in that of the site.
      const isToldAnew = !isOfSite && resolved.problems.length > 0;
      const { problems } = isToldAnew ? resolveSheet(context) : resolved;
      return [sheet, { ...resolved, problems: [...unknownTrials(context), ...problems] }];
    }),
  );
}

/** The reasons in findings are sentences of the site's language: these are in the one that is being written. */
function withFindingsAnew(library: Library, trials: readonly string[]): Library {
  const anew = library.trials.map(({ trial, findings }) => ({
    trial,
    findings: findings !== null && trials.includes(trial.id) ? computeFindings(trial) : findings,
  }));
  return { ...library, trials: anew };
}

/** Trials that a sheet names at its top and that the site does not have. */
function unknownTrials(context: Omit<SheetContext, 'report'>): readonly Problem[] {
  const { own, alone, faulty, sheet } = context;
  if (own !== null || alone) return [];
  const known = knownTrials(context);
  const { report, problems } = collector('');
  for (const place of sheet.trials) {
    const { id } = place;
    if (known.includes(id) || faulty.has(id)) continue;
    const message = say('there is no trial {name}', { name: showText(id) }) + didYouMean(id, known);
    report(sheetUnknownName, { file: sheet.file, place, found: id, message });
  }
  return problems;
}
