import { isMap, isNode, isScalar, isSeq, parseDocument, type Document, type Pair, type YAMLSeq } from 'yaml';

/** A release as it is written under `releases`. */
export interface NewRelease {
  version: string;
  /** Year-month-day. */
  date: string;
  note: string;
}

/**
 * The text of a trial.yaml with a release added at the end of `releases` and `version` set to it. Only these
 * places change: comments, order, quotes, line breaks and the form of every other value stay as they were.
 */
export function editRelease(source: string, release: NewRelease): string {
  const document = parseDocument(source, { schema: 'core', stringKeys: true, logLevel: 'error' });
  const spliced = document.errors.length === 0 ? splice(source, document, release) : null;
  if (spliced !== null && holds(spliced, document, release)) return spliced;
  // A form that was not foreseen: comments still stay, though lines may be broken otherwise.
  document.set('version', release.version);
  if (isSeq(document.get('releases'))) document.addIn(['releases'], document.createNode(release));
  else document.set('releases', document.createNode([release]));
  return document.toString({ lineWidth: 0 });
}

interface Change {
  start: number;
  end: number;
  text: string;
}

function splice(source: string, document: Document.Parsed, release: NewRelease): string | null {
  const root = document.contents;
  if (!isMap(root)) return null;
  const version = root.items.find((pair) => nameOf(pair) === 'version')?.value;
  const releases = root.items.find((pair) => nameOf(pair) === 'releases');
  if (!isScalar(version) || !version.range) return null;
  const [start, end] = version.range;
  const quote = /^["']/.exec(source.slice(start, end))?.[0] ?? '';
  const added =
    releases === undefined
      ? withoutReleases(source, root.flow === true, root.range?.[1] ?? source.length, release)
      : addedTo(source, releases, release);
  if (added === null) return null;
  const changes: Change[] = [{ start, end, text: quote + release.version + quote }, added];
  changes.sort((a, b) => b.start - a.start);
  return changes.reduce(
    (text, change) => text.slice(0, change.start) + change.text + text.slice(change.end),
    source,
  );
}

const nameOf = ({ key }: Pair): string => (isScalar(key) ? String(key.value) : '');

function withoutReleases(source: string, isFlow: boolean, end: number, release: NewRelease): Change | null {
  const newLine = lineBreak(source);
  // JSON: before the brace that closes it.
  if (isFlow) return { start: end - 1, end: end - 1, text: `, "releases": [${inFlow(release, true)}]` };
  const text = `releases:${newLine}  - ${inFlow(release, false)}${newLine}`;
  const needsBreak = source !== '' && !/[\r\n]$/.test(source);
  return { start: source.length, end: source.length, text: needsBreak ? newLine + text : text };
}

function addedTo(source: string, { value }: Pair, release: NewRelease): Change | null {
  if (!isSeq(value) || !value.range) return null;
  const isJson = /^\s*\{/.test(source);
  if (value.flow === true) {
    const last = endOfLast(value);
    const at = last ?? value.range[0] + 1;
    return { start: at, end: at, text: (last === null ? '' : ', ') + inFlow(release, isJson) };
  }
  const last = value.items.at(-1);
  const end = endOfLast(value);
  if (!isNode(last) || !last.range || end === null) return null;
  const dash = source.lastIndexOf('-', last.range[0] - 1);
  const column = dash - (Math.max(source.lastIndexOf('\n', dash), source.lastIndexOf('\r', dash)) + 1);
  // After the last line of the last item, whose comment stays with it.
  const newLine = lineBreak(source);
  const rest = /^[^\r\n]*(\r\n?|\n)?/.exec(source.slice(end))![0];
  const atLineStart = /[\r\n]$/.test(source.slice(0, end));
  const at = atLineStart ? end : end + rest.length;
  const text = `${' '.repeat(column)}- ${inFlow(release, false)}${newLine}`;
  return { start: at, end: at, text: /[\r\n]$/.test(source.slice(0, at)) ? text : newLine + text };
}

/** Where the last item's value ends; null where there is none. */
function endOfLast(sequence: YAMLSeq): number | null {
  const last = sequence.items.at(-1);
  return isNode(last) && last.range ? last.range[1] : null;
}

function inFlow({ version, date, note }: NewRelease, isJson: boolean): string {
  const said = JSON.stringify(note);
  return isJson
    ? `{"version": "${version}", "date": "${date}", "note": ${said}}`
    : `{version: ${version}, date: ${date}, note: ${said}}`;
}

const lineBreak = (source: string): string => /\r\n?|\n/.exec(source)?.[0] ?? '\n';

/** True where a text says what the document said, with the release added and nothing else changed. */
function holds(text: string, before: Document.Parsed, release: NewRelease): boolean {
  const after = parseDocument(text, { schema: 'core', stringKeys: true, logLevel: 'error' });
  if (after.errors.length > 0) return false;
  const old = before.toJS() as Record<string, unknown>;
  const earlier = Array.isArray(old['releases']) ? (old['releases'] as unknown[]) : [];
  const wanted = { ...old, version: release.version, releases: [...earlier, release] };
  return JSON.stringify(after.toJS()) === JSON.stringify(wanted);
}
