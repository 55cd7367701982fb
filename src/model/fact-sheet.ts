/**
 * A fact sheet as plain data: what its author wrote, and nothing that could run. It is a small closed subset of
 * Markdown with components; whatever else a file holds is a fault of its own and never becomes a node.
 */

/** Where a node begins in its file: physical line and character column, both from 1. */
export interface SheetPlace {
  line: number;
  column: number;
}

/** Running text. A line break of the source is a line feed in it. */
export interface SheetText extends SheetPlace {
  kind: 'text';
  text: string;
  /** The column in the file at which each line of the text begins; the first is `column`. */
  columns: readonly number[];
}

/** One attribute of a component, as written: always literal text. */
export interface SheetAttribute extends SheetPlace {
  name: string;
  value: string;
}

/** A component within a line of text, such as a value. */
export interface InlineComponent extends SheetPlace {
  kind: 'component';
  name: string;
  attributes: readonly SheetAttribute[];
  /** What stands between its tags; empty where it closes itself. */
  children: readonly SheetInline[];
}

/** A component on lines of its own, such as a figure. */
export interface BlockComponent extends SheetPlace {
  kind: 'component';
  name: string;
  attributes: readonly SheetAttribute[];
  children: readonly SheetBlock[];
}

export interface SheetLink extends SheetPlace {
  kind: 'link';
  /** An address with http, https or mailto, one of this site that begins with `/`, or `#` and an id. */
  to: string;
  children: readonly SheetInline[];
}

export type SheetInline =
  | SheetText
  | SheetLink
  | InlineComponent
  | (SheetPlace & { kind: 'emphasis' | 'strong'; children: readonly SheetInline[] })
  | (SheetPlace & { kind: 'code'; text: string })
  | (SheetPlace & { kind: 'break' });

export interface SheetHeading extends SheetPlace {
  kind: 'heading';
  /** As written, from 1. */
  depth: number;
  children: readonly SheetInline[];
}

export interface SheetList extends SheetPlace {
  kind: 'list';
  /** The first number, or null for a list of points. */
  start: number | null;
  items: readonly (SheetPlace & { children: readonly SheetBlock[] })[];
}

export interface SheetCell extends SheetPlace {
  children: readonly SheetInline[];
}

export interface SheetTable extends SheetPlace {
  kind: 'table';
  /** One for each column. */
  align: readonly ('left' | 'right' | 'center' | null)[];
  head: readonly SheetCell[];
  rows: readonly (readonly SheetCell[])[];
}

export type SheetBlock =
  | SheetHeading
  | SheetList
  | SheetTable
  | BlockComponent
  | (SheetPlace & { kind: 'paragraph'; children: readonly SheetInline[] })
  | (SheetPlace & { kind: 'quote'; children: readonly SheetBlock[] })
  | (SheetPlace & { kind: 'preformatted'; text: string })
  | (SheetPlace & { kind: 'rule' });

/** A fact sheet read from one file. */
export interface FactSheet {
  /** As problems name it, such as `trials/autumn-lettuce-2025/factsheet.mdx`. */
  file: string;
  /** The language tag in its name (`es` of `factsheet.es.mdx`); null where it is the site's own. */
  language: string | null;
  /** The keys above the text, between lines of `---`; empty where there are none. */
  frontMatter: Readonly<Record<string, unknown>>;
  /** The trials that the front matter names, each with its place; empty in the sheet of a trial. */
  trials: readonly (SheetPlace & { id: string })[];
  /** The title and the summary that the front matter gives; absent where it gives none. */
  opening?: readonly (SheetPlace & { text: string })[];
  blocks: readonly SheetBlock[];
}

/** Where a character of a text stands in its file. */
export function placeInText(text: SheetText, index: number): SheetPlace {
  const before = text.text.slice(0, index).split('\n');
  const column = text.columns[before.length - 1] ?? 1;
  const last = before.at(-1) ?? '';
  // A letter outside the common plane is one character in two units.
  const pairs = last.match(/[\uD800-\uDBFF][\uDC00-\uDFFF]/g)?.length ?? 0;
  return { line: text.line + before.length - 1, column: column + last.length - pairs };
}
