import { decodeUtf8 } from '../read/utf8.ts';
import type { Report } from './rule.ts';
import { reportEmptyFile } from './rules/empty-file.ts';
import { reportNotUtf8 } from './rules/not-utf8.ts';
import { reportNulByte } from './rules/nul-byte.ts';

/** The text of a file, or null with the reason reported: not UTF-8, damaged, or empty. */
export function textOf(file: string, bytes: Uint8Array, report: Report): string | null {
  const { text, wrong } = decodeUtf8(bytes);
  if (wrong !== null) {
    reportNotUtf8(report, file, wrong);
    return null;
  }
  if (reportNulByte(report, file, text)) return null;
  if (text.trim() === '') {
    reportEmptyFile(report, file);
    return null;
  }
  return text;
}
