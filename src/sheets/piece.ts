import type { Caution } from '../compute/cautions/caution.ts';
import type { PageTable } from '../compute/tables/page-table.ts';
import type { Words } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';

/** Within a sentence: words that lead to their working, and words behind them. */
export interface WordsPiece {
  kind: 'words';
  words: Words;
  /** The address under the site's own path; null where there is nothing to lead to. */
  path: string | null;
  behind: Words;
}

/** What a component became, ready to print. */
export type Piece =
  | WordsPiece
  /** Paragraphs of their own; the first one is the finding where `finding` is set. */
  | { kind: 'sentences'; sentences: readonly Words[]; finding: boolean }
  | { kind: 'figures'; figures: readonly Figure[] }
  /** `page` is the address under the site's own path on which the workings of the cells stand. */
  | { kind: 'tables'; tables: readonly PageTable[]; page: string }
  /** `index` is the photograph's place in the trial's list; the caption is the sheet's own, or null. */
  | { kind: 'photograph'; trial: string; index: number; caption: string | null }
  | { kind: 'cautions'; cautions: readonly Caution[] }
  | { kind: 'citation'; sentence: string; path: string }
  /** What stands between its tags is printed as someone else's words, or as the author's own caution. */
  | { kind: 'quoted' }
  | { kind: 'caution' };

/** Words that lead somewhere, and words behind them. */
export function wordsPiece(words: Words, path: string | null, behind: Words = []): WordsPiece[] {
  return [{ kind: 'words', words, path, behind }];
}
