import { decodeUtf8 } from './utf8.ts';

/**
 * The text of a file that a spreadsheet saved: UTF-8, or else UTF-16 where its bytes look it, or else Windows-1252,
 * which any bytes are. The encoding is null for UTF-8, so that another can be told of.
 */
export function textOfBytes(bytes: Uint8Array): { text: string; encoding: string | null } {
  const { text, wrong } = decodeUtf8(bytes);
  if (text !== null) return { text, encoding: null };
  if (wrong.guess === 'UTF-16') {
    const isBigEndian = bytes[0] === 0xfe || bytes[0] === 0;
    const label = isBigEndian ? 'utf-16be' : 'utf-16le';
    return { text: new TextDecoder(label).decode(bytes), encoding: 'UTF-16' };
  }
  return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'Windows-1252' };
}
