import { isMap, isScalar, isSeq, parseDocument, stringify } from 'yaml';

/** A release as it is written into trial.yaml. */
export interface NewRelease {
  version: string;
  /** ISO 8601. */
  date: string;
  note: string;
}

/**
 * The text of a trial.yaml with its version raised and a release added as the last of its list; every other
 * character, comments and spacing included, stays as it was. Null where the text has no plain version at its
 * top or its releases are not a list.
 */
export function withRelease(text: string, release: NewRelease): string | null {
  const { contents } = parseDocument(text, { keepSourceTokens: false });
  if (!isMap(contents)) return null;
  const version = contents.get('version', true);
  if (!isScalar(version) || !version.range) return null;
  const releases = contents.get('releases', true);
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const line = `- {version: ${release.version}, date: ${release.date}, note: ${inQuotes(release.note)}}`;
  const [from, to] = version.range;
  const raised = (part: string): string => part.slice(0, from) + release.version + part.slice(to);
  if (releases === undefined || releases === null) {
    const end = text.endsWith('\n') ? '' : lineEnd;
    return `${raised(text)}${end}releases:${lineEnd}  ${line}${lineEnd}`;
  }
  if (!isSeq(releases) || releases.flow === true) return null;
  const last = releases.items.at(-1) as { range?: [number, number, number] } | undefined;
  if (!last?.range) return null;
  const head = text.slice(0, last.range[0]);
  const indent =
    /(?:^|\n)([ ]*)-[ \n]*(?:[^\n]*)$/.exec(head.slice(head.lastIndexOf('\n', head.length - 1)))?.[1] ?? '  ';
  const body = text.slice(0, last.range[1]).trimEnd();
  const rest = text.slice(body.length);
  const withLine = `${body}${lineEnd}${indent}${line}${rest.startsWith('\n') || rest.startsWith('\r') ? rest : lineEnd + rest}`;
  return from < last.range[0] ? raised(withLine) : null;
}

/** A note on one line, in double quotes. */
function inQuotes(note: string): string {
  return stringify(note.replaceAll(/\s+/g, ' ').trim(), {
    defaultStringType: 'QUOTE_DOUBLE',
    lineWidth: 0,
  }).trim();
}
