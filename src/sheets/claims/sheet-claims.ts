import { collector } from '../../check/collect.ts';
import type { FactSheet, SheetBlock } from '../../model/fact-sheet.ts';
import { inLanguage, type Language, language as siteLanguage, languageOf } from '../../model/language.ts';
import type { Library, TrialWithFindings } from '../../model/library.ts';
import type { Problem } from '../../model/problem.ts';
import { say } from '../../model/say.ts';
import { allSeasons, identityOf } from '../../publish/crop-comparisons.ts';
import type { SheetPage } from '../../publish/sheet-pages.ts';
import { inPlainWidth, passagesOf } from '../prose/passages-of.ts';
import type { Passage } from '../prose/passage.ts';
import { sentencesOf } from '../prose/sentences-of.ts';
import { checkClaims } from './check-claims.ts';
import { checkSameness } from './check-sameness.ts';
import { checkTypedNumbers } from './check-typed-numbers.ts';
import { claimWords } from './claim-words.ts';
import type { Fact } from './fact.ts';
import { factsOfSeasons } from './facts-of-seasons.ts';
import { factsOfTrial } from './facts-of-trial.ts';

/** What the sentences of a sheet are held against. */
export interface SheetClaims {
  file: string;
  language: string;
  /** The site's language, in which what is wrong is told. */
  told: Language;
  library: Library;
  own: TrialWithFindings | null;
  /** The trials that the sheet speaks of or cites. */
  trials: readonly TrialWithFindings[];
  facts: readonly Fact[];
}

/** Every number and claim of a sheet's own words that the findings do not bear out. */
export function claimProblems(page: SheetPage, library: Library): Problem[] {
  const { report, problems } = collector('');
  const told = siteLanguage();
  inLanguage(languageOf(page.language), () => {
    const sheet = claimsOf(page, library, told);
    const words = claimWords(page.language);
    for (const sentence of ownWords(page.sheet).flatMap(sentencesOf)) {
      checkTypedNumbers(sentence, sheet, words, report);
      if (words === null) continue;
      checkClaims(sentence, sheet, words, report);
      checkSameness(sentence, sheet, words, report);
    }
  });
  return problems;
}

/** The title and summary above the text, and the text. */
export function ownWords(sheet: FactSheet): Passage[] {
  const opening = (sheet.opening ?? []).map(({ text, line, column }): Passage => {
    return { kind: 'text', text: inPlainWidth(text), place: () => ({ line, column }), components: [] };
  });
  return [...opening, ...passagesOf(sheet.blocks)];
}

function claimsOf(
  { sheet, own, trials: named, language }: SheetPage,
  library: Library,
  told: Language,
): SheetClaims {
  const cited = trialsAsked(sheet.blocks);
  const more = library.trials.filter((item) => cited.has(item.trial.id) && !named.includes(item));
  const trials = [...named, ...more];
  const facts = trials.flatMap(({ trial, findings }) =>
    findings === null
      ? []
      : ofTrial(factsOfTrial(trial, findings, library.cultivars), trial.id, trials.length > 1),
  );
  const { name } = identityOf(library);
  const seasons = own !== null ? [] : allSeasons(library).flatMap((entry) => factsOfSeasons(entry, name));
  return { file: sheet.file, language, told, library, own, trials, facts: [...facts, ...seasons] };
}

/** Where several trials are spoken of, a fact says which one it is of, and so does the component. */
function ofTrial(facts: readonly Fact[], id: string, several: boolean): readonly Fact[] {
  if (!several) return facts;
  return facts.map((fact) => ({
    ...fact,
    words: () => say('{what} in {trial}', { what: fact.words(), trial: id }),
    component: fact.component?.replace(/ \/>$/, ` trial="${id}" />`) ?? null,
  }));
}

/** The trials that components of a sheet ask for by name. */
function trialsAsked(blocks: readonly SheetBlock[]): Set<string> {
  const found = new Set<string>();
  const queue: unknown[] = [...blocks];
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    if (typeof node !== 'object' || node === null) continue;
    const { kind, attributes } = node as { kind?: string; attributes?: { name: string; value: string }[] };
    if (kind === 'component')
      for (const { name, value } of attributes ?? []) if (name === 'trial') found.add(value);
    for (const inside of Object.values(node)) if (Array.isArray(inside)) queue.push(...(inside as unknown[]));
  }
  return found;
}
