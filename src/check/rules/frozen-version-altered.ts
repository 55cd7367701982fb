import { say } from '../../model/say.ts';
import { withLineFeeds } from '../../read/place.ts';
import { sha256 } from '../../read/sha256.ts';
import { decodeUtf8 } from '../../read/utf8.ts';
import type { Facts } from '../facts.ts';
import { frozenVersions, sumsFile, type FrozenVersion } from '../frozen-versions.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'frozen-version-altered',
  severity: 'error',
  acceptable: false,
  title: 'Frozen version was altered',
  meaning:
    'What was released stays as it was: others have cited it and computed with it. A correction is a new release.',
  example:
    'versions/1.0.0/harvest.csv is not as it was frozen: its SHA-256 is no longer the one in SHA256SUMS; put the file back as it was',
  check,
};
export default rule;

function check({ files }: Facts, report: Report): void {
  for (const version of frozenVersions(files)) {
    const sums = version.files.get(sumsFile);
    if (sums !== undefined) compare(version, sums, report);
  }
}

function compare({ version, files }: FrozenVersion, sums: Uint8Array, report: Report): void {
  const folder = `versions/${version}`;
  const listed = new Set<string>();
  let isWhole = true;
  const lines = (decodeUtf8(sums).text ?? '\u{fffd}').split(/\r?\n/);
  for (const [index, line] of lines.entries()) {
    if (line === '') continue;
    const [, sum, name] = /^([0-9a-f]{64}) [ *](.+)$/.exec(line) ?? [];
    if (sum === undefined || name === undefined) {
      isWhole = false;
      const message = say(
        "{line} is no line of {file}, which are a SHA-256, two spaces and a file's name; put it back as it was, and release a correction instead",
        { line: showText(line), file: sumsFile },
      );
      report(rule, {
        file: `${folder}/${sumsFile}`,
        place: { line: index + 1, column: 1 },
        found: line,
        message,
      });
      continue;
    }
    listed.add(name);
    const bytes = files.get(name);
    if (bytes !== undefined && isAsFrozen(bytes, sum)) continue;
    const found = bytes === undefined ? null : sha256(bytes);
    const file = `${folder}/${name}`;
    const message =
      found === null
        ? say(
            '{file} is gone, though it was frozen; put it back as it was, and release a correction instead',
            { file },
          )
        : say(
            '{file} is not as it was frozen: its SHA-256 is another; put it back as it was, and release a correction instead',
            { file },
          );
    report(rule, { file, found, expected: sum, message });
  }
  // Of a line that cannot be read nobody knows which file it lists.
  if (!isWhole) return;
  for (const name of files.keys()) {
    // The archive as it was published may be put beside what was frozen.
    if (name === sumsFile || name.endsWith('.zip') || listed.has(name)) continue;
    const file = `${folder}/${name}`;
    const message = say('{file} was not there when {version} was frozen; take it out of the folder', {
      file,
      version,
    });
    report(rule, { file, found: name, message });
  }
}

/** Line breaks may be others: version control changes them on some systems, and no value with them. */
export function isAsFrozen(bytes: Uint8Array, sum: string): boolean {
  if (sha256(bytes) === sum) return true;
  const { text } = decodeUtf8(bytes);
  if (text === null) return false;
  const lines = withLineFeeds(text);
  const encoder = new TextEncoder();
  return [lines, lines.replaceAll('\n', '\r\n')].some((form) => sha256(encoder.encode(form)) === sum);
}
