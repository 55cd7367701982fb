import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument, type Document } from 'yaml';
import { columnAt, withLineFeeds, type Place } from './place.ts';

/** Keys and indexes from the document's root to a value. */
export type Path = readonly (string | number)[];

/** A fault of the YAML itself. */
export interface YamlFault {
  kind: 'syntax' | 'duplicate key' | 'tab' | 'aliases' | 'several documents';
  place: Place | null;
  /** The library's first line, without positions. */
  detail: string;
  /** The line as it stands, or null. */
  text: string | null;
}

/** A YAML document: its value, its faults, and where each value and key stands. */
export interface Yaml {
  /** Plain objects, arrays and scalars; null where the document is empty or faulty. */
  value: unknown;
  faults: readonly YamlFault[];
  /** Where the value at a path stands, or the nearest ancestor that does. */
  place(path: Path): Place;
  /** Where the key that ends the path stands; the value's place where it is an index. */
  keyPlace(path: Path): Place;
}

const start: Place = { line: 1, column: 1 };

const kinds: Readonly<Record<string, YamlFault['kind']>> = {
  DUPLICATE_KEY: 'duplicate key',
  TAB_AS_INDENT: 'tab',
  MULTIPLE_DOCS: 'several documents',
  RESOURCE_EXHAUSTION: 'syntax',
};

/** Reads YAML 1.2 (and so JSON) strictly; whatever is wrong comes back as faults. */
export function readYaml(source: string): Yaml {
  const text = withLineFeeds(source);
  const lines = new LineCounter();
  const placeOf = (offset: number): Place => {
    const line = Math.max(lines.linePos(offset).line, 1);
    return { line, column: columnAt(text, Math.min(offset, text.length)) };
  };
  const lineText = (place: Place): string => text.split('\n')[place.line - 1] ?? '';
  let document: Document.Parsed;
  try {
    document = parseDocument(text, {
      lineCounter: lines,
      prettyErrors: false,
      // A %YAML 1.1 directive would turn yes into true and dates into points in time.
      schema: 'core',
      // !!binary and the like make of a text what no key is.
      resolveKnownTags: false,
      stringKeys: true,
      logLevel: 'error',
    });
  } catch {
    const fault: YamlFault = { kind: 'syntax', place: null, detail: 'Nested too deep to read', text: null };
    return { value: null, faults: [fault], place: () => start, keyPlace: () => start };
  }
  const all = [...document.errors, ...document.warnings].map((error): YamlFault => {
    const place = placeOf(openingQuote(text, error.message) ?? error.pos[0]);
    const kind = kinds[error.code] ?? 'syntax';
    // A tab in the indentation is often first noticed as something else.
    const isTab = kind === 'syntax' && /^ *\t/.test(lineText(place));
    return { kind: isTab ? 'tab' : kind, place, detail: sentence(error.message), text: lineText(place) };
  });
  // What follows a fault in its line follows from it.
  const faults = all.filter(
    ({ place }, index) => all.findIndex((other) => other.place?.line === place?.line) === index,
  );
  let value: unknown = null;
  if (faults.length === 0) {
    try {
      value = document.toJS({ maxAliasCount: 100 });
    } catch (error) {
      const detail = error instanceof Error ? sentence(error.message) : 'Aliases cannot be resolved';
      const first = text.indexOf('*');
      const place = first === -1 ? null : placeOf(first);
      const kind = detail.startsWith('Unresolved alias') ? 'syntax' : 'aliases';
      faults.push({ kind, place, detail, text: place ? lineText(place) : null });
    }
  }
  return {
    value,
    faults,
    place: (path) => placeOf(offsetOf(document, path, false)),
    keyPlace: (path) => placeOf(offsetOf(document, path, true)),
  };
}

/** Where a quote that is never closed probably opened: a value begun with it on a line that does not end it. */
function openingQuote(text: string, message: string): number | null {
  const quote = /^Missing closing (["'])quote/.exec(message)?.[1];
  if (quote === undefined) return null;
  const open = new RegExp(`(?:^|[\\s:,[{-])(${quote})[^${quote}\\n]*$`, 'm').exec(text);
  return open === null ? null : open.index + open[0].indexOf(quote);
}

function sentence(message: string): string {
  return (message.split('\n')[0] ?? message).replace(/ at line \d+.*$/, '').replace(/[.:]+$/, '');
}

function resolved(document: Document.Parsed, node: unknown): unknown {
  return isAlias(node) ? node.resolve(document) : node;
}

function rangeStart(node: unknown): number | null {
  const range: unknown = typeof node === 'object' && node !== null && 'range' in node ? node.range : null;
  return Array.isArray(range) && typeof range[0] === 'number' ? range[0] : null;
}

/** The offset of the value (or its key) at a path; of the deepest part of the path that exists otherwise. */
function offsetOf(document: Document.Parsed, path: Path, wantKey: boolean): number {
  let node: unknown = document.contents;
  let offset = rangeStart(node) ?? 0;
  for (const [depth, step] of path.entries()) {
    const isLast = depth === path.length - 1;
    const parent = resolved(document, node);
    if (isMap(parent)) {
      const pair = parent.items.find(
        ({ key }) => (isScalar(key) ? String(key.value) : String(key)) === String(step),
      );
      if (pair === undefined) return offset;
      const keyOffset = rangeStart(pair.key) ?? offset;
      // An empty value's own range lies after its key; the key is where a reader looks.
      const valueOffset = isEmpty(pair.value) ? keyOffset : (rangeStart(pair.value) ?? keyOffset);
      offset = wantKey && isLast ? keyOffset : valueOffset;
      node = pair.value;
    } else if (isSeq(parent)) {
      node = parent.items[Number(step)];
      const found = rangeStart(node);
      if (found === null) return offset;
      offset = found;
    } else return offset;
  }
  return offset;
}

function isEmpty(node: unknown): boolean {
  return node === null || (isScalar(node) && node.value === null && (node.source ?? '') === '');
}
