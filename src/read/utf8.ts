/** Why bytes are not UTF-8 text: the first wrong byte and its line, and what the file probably is instead. */
export interface WrongBytes {
  /** Physical line from 1 of the first wrong byte. */
  line: number;
  /** Its offset in the file from 0. */
  offset: number;
  byte: number;
  guess: 'UTF-16' | 'Latin-1';
}

export type Decoded = { text: string; wrong: null } | { text: null; wrong: WrongBytes };

const lineFeed = 0x0a;
const carriageReturn = 0x0d;

/** Strict UTF-8: decodes all of it or says where it stops being UTF-8. A byte order mark is left out of the text. */
export function decodeUtf8(bytes: Uint8Array): Decoded {
  if (looksLikeUtf16(bytes)) {
    const offset = bytes.indexOf(0);
    const first = isMark(bytes) || offset < 0 ? 0 : offset;
    return { text: null, wrong: { line: 1, offset: first, byte: bytes[first] ?? 0, guess: 'UTF-16' } };
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), wrong: null };
  } catch {
    const offset = firstWrongByte(bytes);
    const wrong = {
      line: lineAt(bytes, offset),
      offset,
      byte: bytes[offset] ?? 0,
      guess: 'Latin-1' as const,
    };
    return { text: null, wrong };
  }
}

function isMark(bytes: Uint8Array): boolean {
  const [a, b] = bytes;
  return (a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff);
}

/** A UTF-16 mark, or every other byte of the beginning a zero: western text in UTF-16 without a mark. */
function looksLikeUtf16(bytes: Uint8Array): boolean {
  if (isMark(bytes)) return true;
  const length = Math.min(bytes.length, 200) & ~1;
  if (length < 4) return false;
  let even = 0;
  let odd = 0;
  for (let index = 0; index < length; index += 2) {
    if (bytes[index] === 0) even += 1;
    if (bytes[index + 1] === 0) odd += 1;
  }
  return Math.max(even, odd) > length * 0.4;
}

function lineAt(bytes: Uint8Array, offset: number): number {
  let line = 1;
  for (let index = 0; index < offset; index += 1) {
    const byte = bytes[index];
    if (byte === lineFeed || (byte === carriageReturn && bytes[index + 1] !== lineFeed)) line += 1;
  }
  return line;
}

/** The well-formed byte sequences of the Unicode Standard, table 3-7. */
function sequence(lead: number): { more: number; low: number; high: number } | null {
  if (lead >= 0xc2 && lead <= 0xdf) return { more: 1, low: 0x80, high: 0xbf };
  if (lead === 0xe0) return { more: 2, low: 0xa0, high: 0xbf };
  if (lead === 0xed) return { more: 2, low: 0x80, high: 0x9f };
  if (lead >= 0xe1 && lead <= 0xef) return { more: 2, low: 0x80, high: 0xbf };
  if (lead === 0xf0) return { more: 3, low: 0x90, high: 0xbf };
  if (lead >= 0xf1 && lead <= 0xf3) return { more: 3, low: 0x80, high: 0xbf };
  if (lead === 0xf4) return { more: 3, low: 0x80, high: 0x8f };
  return null;
}

/** Offset of the first byte that begins no well-formed UTF-8 sequence; the length where all are well formed. */
export function firstWrongByte(bytes: Uint8Array): number {
  let index = 0;
  while (index < bytes.length) {
    const lead = bytes[index] ?? 0;
    if (lead < 0x80) {
      index += 1;
      continue;
    }
    const wanted = sequence(lead);
    if (wanted === null) return index;
    for (let step = 1; step <= wanted.more; step += 1) {
      const next = bytes[index + step];
      const low = step === 1 ? wanted.low : 0x80;
      const high = step === 1 ? wanted.high : 0xbf;
      if (next === undefined || next < low || next > high) return index;
    }
    index += wanted.more + 1;
  }
  return index;
}
