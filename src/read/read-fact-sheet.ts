import type { FactSheet } from '../model/fact-sheet.ts';
import { type Place, withLineFeeds } from './place.ts';
import { blocksOf } from './sheet-blocks.ts';
import type { SheetFault } from './sheet-fault.ts';
import { type MarkdownNode, type MarkdownRoot, parseMarkdown } from './sheet-parser.ts';
import { sheetReading } from './sheet-reading.ts';
import { type SheetSource, sheetSource } from './sheet-source.ts';
import { firstUnseen } from './unseen.ts';
import { readYaml, type Yaml } from './yaml.ts';

/** A fact sheet as read: its tree, whatever may not stand in it, and its front matter with places. */
export interface SheetRead {
  /** Null where the syntax is broken or the file is too large; else without what is at fault. */
  sheet: FactSheet | null;
  faults: readonly SheetFault[];
  /** Null where there is no front matter. */
  yaml: Yaml | null;
}

/** Several times what four printed pages hold. */
const mostCharacters = 30_000;
/** Quotes and lists begun within one another on one line. */
const mostMarks = 8;
/** Cells in a row of a table, which no page is wide enough for. */
const mostCells = 50;

/**
 * Reads MDX as text from a stranger: it is parsed and never compiled, and nothing of it is ever run. Plain Markdown
 * with tables, and components with literal attributes, become the tree; all else becomes a fault with its place.
 *
 * `file` is its path as problems are to name it; its last part tells the language.
 */
export function readFactSheet(text: string, file: string): SheetRead {
  const whole = withLineFeeds(text);
  // Front matter counts as well: a parser of YAML takes minutes over one of millions of characters.
  if (whole.length > mostCharacters) return { sheet: null, faults: [tooLarge(whole)], yaml: null };
  const front = frontMatterOf(whole);
  const yaml = front === null ? null : shifted(readYaml(front.yaml));
  const source = sheetSource(front === null ? whole : front.rest);
  const tooMuch = limitPassed(source);
  if (tooMuch !== null) return { sheet: null, faults: [tooMuch], yaml };
  const open = front === null ? openFrontMatter(source) : null;
  if (open !== null) return { sheet: null, faults: [open], yaml };
  const root = rootOf(source);
  if (!('children' in root)) return { sheet: null, faults: [root], yaml };
  const reading = sheetReading(source, definitionsIn(root.children));
  const hidden = firstUnseen(whole);
  if (hidden !== null) {
    const { found, offset } = hidden;
    reading.faults.push({ kind: 'unseen', place: source.place(offset), found, detail: '' });
  }
  const blocks = blocksOf(root.children, reading);
  const frontMatter = isMapping(yaml?.value) ? yaml.value : {};
  const language = languageOf(file);
  const sheet = { file, language, frontMatter, trials: trialsNamed(yaml), opening: openingOf(yaml), blocks };
  return { sheet, faults: reading.faults, yaml };
}

/** The language tag in a sheet's name: `es` of `factsheet.es.mdx`; null where there is none. */
export function languageOf(file: string): string | null {
  return /^[^.]+\.([^.]+)\.mdx$/.exec(file.split('/').at(-1) ?? '')?.[1] ?? null;
}

/** The lines between two of `---` at the very top, and the text with those lines blanked out. */
function frontMatterOf(text: string): { yaml: string; rest: string } | null {
  const [all, yaml] = /^---[ \t]*\n([\s\S]*?)(?<=\n)---[ \t]*(?=\n|$)/.exec(text) ?? [];
  if (all === undefined || yaml === undefined) return null;
  return { yaml, rest: all.replaceAll(/[^\n]/g, ' ') + text.slice(all.length) };
}

/** Front matter that is not closed, or does not stand at the very top: Markdown would print its keys. */
function openFrontMatter({ text, place }: SheetSource): SheetFault | null {
  const found = /^\s*---[ \t]*\n\s*(?:title|summary|trials|date|people):/.exec(text);
  if (found === null) return null;
  const at = text.indexOf('---');
  return {
    kind: 'front matter',
    place: place(at),
    found: '---',
    detail: at === 0 ? 'not closed' : 'not at the top',
  };
}

/** The places of front matter are a line further down than its YAML knows. */
function shifted(yaml: Yaml): Yaml {
  const down = (place: Place): Place => ({ ...place, line: place.line + 1 });
  return {
    value: yaml.value,
    faults: yaml.faults.map((fault) => ({ ...fault, place: fault.place && down(fault.place) })),
    place: (path) => down(yaml.place(path)),
    keyPlace: (path) => down(yaml.keyPlace(path)),
  };
}

function trialsNamed(yaml: Yaml | null): FactSheet['trials'] {
  const named = isMapping(yaml?.value) ? yaml.value['trials'] : undefined;
  if (yaml === null || !Array.isArray(named)) return [];
  return named.flatMap((id: unknown, index) =>
    typeof id === 'string' ? [{ id, ...yaml.place(['trials', index]) }] : [],
  );
}

/** What a sheet says of itself at its top, which is printed as its own words are. */
function openingOf(yaml: Yaml | null): NonNullable<FactSheet['opening']> {
  return ['title', 'summary'].flatMap((key) => {
    const text = isMapping(yaml?.value) ? yaml.value[key] : undefined;
    return typeof text === 'string' && yaml !== null ? [{ text, ...yaml.place([key]) }] : [];
  });
}

function tooLarge(text: string): SheetFault {
  const place = { line: 1, column: 1 };
  return { kind: 'too large', place, found: String(text.length), detail: String(mostCharacters) };
}

/** What would take the parser too long. */
function limitPassed({ text, place }: SheetSource): SheetFault | null {
  const row = new RegExp(`^(?:[^|\\n]*\\|){${String(mostCells + 1)}}`, 'm').exec(text);
  if (row !== null) {
    return {
      kind: 'too wide',
      place: place(row.index),
      found: row[0],
      detail: String(mostCells),
    };
  }
  const marks = new RegExp(
    `^(?:[ \\t]*(?:>|(?:[-+*]|\\d{1,9}[.)])(?=[ \\t]))){${String(mostMarks + 1)}}`,
    'm',
  );
  const at = marks.exec(text);
  if (at === null) return null;
  return { kind: 'too deep', place: place(at.index), found: at[0], detail: String(mostMarks) };
}

function rootOf(source: SheetSource): MarkdownRoot | SheetFault {
  try {
    return parseMarkdown(source.text);
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    const place = placeOf(error, detail, source);
    // HTML that needs no closing tag is broken syntax to the parser, and still HTML to its author.
    const tag = /^Expected a closing tag for `<([a-z][^`>]*)>`/.exec(detail)?.[1];
    if (tag !== undefined) return { kind: 'raw tag', place, found: `<${tag}>`, detail: '' };
    return { kind: 'syntax', place, found: '', detail };
  }
}

/** Where the parser stopped. Where it missed a closing tag, its message names the opening one, which is where to look. */
function placeOf(error: unknown, detail: string, source: SheetSource): Place {
  const [, line, column] = /\((\d+):(\d+)-\d+:\d+\)/.exec(detail) ?? [];
  if (line !== undefined) return { line: Number(line), column: Number(column) };
  if (typeof error !== 'object' || error === null || !('place' in error)) return source.place(0);
  const place = error.place as { offset?: number; start?: { offset?: number } } | undefined;
  return source.place(place?.start?.offset ?? place?.offset ?? 0);
}

function definitionsIn(nodes: readonly MarkdownNode[]): Map<string, string> {
  const found = new Map<string, string>();
  const queue = [...nodes];
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    // Of two definitions of a label the first one counts; the queue gives the last one first.
    if (node.type === 'definition') found.set(node.identifier, node.url);
    if ('children' in node) queue.push(...node.children);
  }
  return found;
}

function isMapping(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
