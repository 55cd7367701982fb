import type { BlockComponent, InlineComponent, SheetPlace } from '../../model/fact-sheet.ts';

/** Stands in a passage's text where a component or someone else's words stand. */
export const held = '\uFFFC';

/** A component that a passage holds, and where in its text. */
export interface HeldComponent {
  index: number;
  component: InlineComponent | BlockComponent;
}

/** A stretch of a sheet's own words: a paragraph, a heading, a row of a table. */
export interface Passage {
  kind: 'heading' | 'text' | 'row';
  /** Line feeds are spaces in it. */
  text: string;
  /** Where a character of it stands in the file. */
  place(index: number): SheetPlace;
  components: readonly HeldComponent[];
  /** For a row of a table: each column's heading, where its cell begins in the text, and how long it is. */
  cells?: readonly { heading: string; index: number; length: number }[];
}

/** A sentence of a passage. */
export interface Sentence {
  passage: Passage;
  text: string;
  /** Where it begins in the passage. */
  index: number;
  components: readonly HeldComponent[];
  place(index: number): SheetPlace;
}
