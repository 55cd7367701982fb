import {
  isCollection,
  isMap,
  isNode,
  isScalar,
  isSeq,
  parse,
  parseDocument,
  type Document,
  type Node,
  type Pair,
  type YAMLMap,
} from 'yaml';

/** What can be written into YAML. */
export type YamlValue =
  string | number | boolean | null | readonly YamlValue[] | { readonly [key: string]: YamlValue };

type Step = string | number;
const options = { schema: 'core', stringKeys: true, logLevel: 'error' } as const;

/**
 * The text of a YAML file with one value set. Only its place changes: comments, order, quotes, line breaks and
 * the form of every other value stay as they were. A mapping on the way that is not there is made.
 */
export function setInYaml(source: string, path: readonly Step[], value: YamlValue): string {
  const document = parseDocument(source, options);
  const [key, ...above] = [...path].reverse();
  const parentPath = above.reverse();
  const parent = parentPath.length === 0 ? document.contents : document.getIn(parentPath, true);
  if (parent === undefined && parentPath.length > 0)
    return setInYaml(source, parentPath, { [String(key)]: value });
  const change = isMap(parent) ? changeOf(source, parent as YAMLMap, String(key), value) : null;
  const spliced = change === null ? null : withChange(source, change);
  const wanted = wantedAfter(document, (copy) => {
    copy.setIn(path, copy.createNode(value));
  });
  return spliced !== null && says(spliced, wanted) ? spliced : wanted.text;
}

/** The text of a YAML file with an item added at the end of a list, which is made where it is not there. */
export function addToYaml(source: string, path: readonly Step[], item: YamlValue): string {
  const document = parseDocument(source, options);
  const list = document.getIn(path, true);
  if (!isSeq(list)) return setInYaml(source, path, [item]);
  const change = itemChange(source, list.flow === true, list.items.at(-1), list.range?.[0] ?? 0, item);
  const spliced = change === null ? null : withChange(source, change);
  const wanted = wantedAfter(document, (copy) => {
    copy.addIn(path, copy.createNode(item));
  });
  return spliced !== null && says(spliced, wanted) ? spliced : wanted.text;
}

interface Change {
  start: number;
  end: number;
  text: string;
}

const withChange = (source: string, { start, end, text }: Change): string =>
  source.slice(0, start) + text + source.slice(end);

/** What the document says after a change, and how it would be written anew: comments stay, lines may break otherwise. */
function wantedAfter(
  document: Document.Parsed,
  change: (copy: Document) => void,
): { text: string; value: string } {
  const copy = document.clone() as Document;
  change(copy);
  return { text: copy.toString({ lineWidth: 0 }), value: JSON.stringify(copy.toJS()) };
}

function says(text: string, { value }: { value: string }): boolean {
  const after = parseDocument(text, options);
  return after.errors.length === 0 && JSON.stringify(after.toJS()) === value;
}

function changeOf(source: string, parent: YAMLMap, key: string, value: YamlValue): Change | null {
  const pair = (parent.items as Pair[]).find((one) => isScalar(one.key) && one.key.value === key);
  const isJson = /^\s*\{/.test(source);
  if (pair !== undefined) {
    if (!isNode(pair.value) || !pair.value.range) return null;
    const isPlain = isScalar(pair.value) || (isCollection(pair.value) && pair.value.flow === true);
    const [start, end] = pair.value.range;
    return isPlain ? { start, end, text: inFlow(value, isJson) } : blockChange(source, pair, value);
  }
  const last = parent.items.at(-1) as Pair | undefined;
  const end = last === undefined ? null : endOf(last.value ?? last.key);
  if (parent.flow === true) {
    const at = end ?? (parent.range?.[0] ?? 0) + 1;
    const name = isJson ? JSON.stringify(key) : key;
    const text = `${end === null ? '' : ', '}${name}: ${inFlow(value, isJson)}`;
    return { start: at, end: at, text };
  }
  const first = (parent.items as Pair[])[0]?.key;
  if (end === null || !isNode(first) || !first.range) return null;
  const indent = ' '.repeat(columnOf(source, first.range[0]));
  return lineAfter(source, end, `${indent}${key}:${inBlock(value, indent, lineBreak(source))}`);
}

/** A list or mapping over several lines gives way whole, from behind its key's colon to its last line. */
function blockChange(source: string, { key, value: old }: Pair, value: YamlValue): Change | null {
  if (!isNode(key) || !key.range || !isNode(old) || !old.range) return null;
  const start = source.indexOf(':', key.range[1]) + 1;
  const end = source.slice(0, old.range[1]).trimEnd().length;
  const indent = ' '.repeat(columnOf(source, key.range[0]));
  return { start, end, text: inBlock(value, indent, lineBreak(source)) };
}

function itemChange(
  source: string,
  isFlow: boolean,
  last: unknown,
  start: number,
  item: YamlValue,
): Change | null {
  const end = endOf(last);
  const isJson = /^\s*\{/.test(source);
  if (isFlow) {
    const at = end ?? start + 1;
    return { start: at, end: at, text: (end === null ? '' : ', ') + inFlow(item, isJson) };
  }
  if (end === null || !isNode(last) || !last.range) return null;
  const dash = source.lastIndexOf('-', last.range[0] - 1);
  return lineAfter(source, end, `${' '.repeat(columnOf(source, dash))}- ${inFlow(item, false)}`);
}

const endOf = (node: unknown): number | null => (isNode(node) ? ((node as Node).range?.[1] ?? null) : null);

function columnOf(source: string, at: number): number {
  return at - (Math.max(source.lastIndexOf('\n', at - 1), source.lastIndexOf('\r', at - 1)) + 1);
}

/** A line of its own after the line that a value ends on, whose comment stays with it. */
function lineAfter(source: string, end: number, line: string): Change {
  const newLine = lineBreak(source);
  const isAtStart = /[\r\n]$/.test(source.slice(0, end));
  const rest = /^[^\r\n]*(\r\n?|\n)?/.exec(source.slice(end))![0];
  const at = isAtStart ? end : end + rest.length;
  const isAfterBreak = /[\r\n]$/.test(source.slice(0, at));
  return { start: at, end: at, text: `${isAfterBreak ? '' : newLine}${line}${newLine}` };
}

const lineBreak = (source: string): string => /\r\n?|\n/.exec(source)?.[0] ?? '\n';

/** A list of mappings has a line for each; all else stands on one line. */
function inBlock(value: YamlValue, indent: string, newLine: string): string {
  const isList = Array.isArray(value) && value.some((item) => typeof item === 'object' && item !== null);
  if (!isList) return ` ${inFlow(value, false)}`;
  return (value as readonly YamlValue[])
    .map((item) => `${newLine}${indent}  - ${inFlow(item, false)}`)
    .join('');
}

/** A value on one line: `{date: 2025-10-20, what: "tip burn, mostly outside"}`. */
export function inFlow(value: YamlValue, isJson = false): string {
  if (Array.isArray(value)) return `[${value.map((item: YamlValue) => inFlow(item, isJson)).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const items = Object.entries(value).map(
      ([key, item]: [string, YamlValue]) =>
        `${isJson || !/^[A-Za-z_]\w*$/.test(key) ? JSON.stringify(key) : key}: ${inFlow(item, isJson)}`,
    );
    return `{${items.join(', ')}}`;
  }
  if (typeof value !== 'string' || isJson) return JSON.stringify(value);
  const isPlain =
    /^[\p{L}\d][\p{L}\d ./_-]*$/u.test(value) && !value.endsWith(' ') && parse(value, options) === value;
  return isPlain ? value : JSON.stringify(value);
}
