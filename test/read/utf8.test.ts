import { describe, expect, it } from 'vitest';
import { decodeUtf8, firstWrongByte } from '../../src/read/utf8.ts';

const bytes = (...values: number[]): Uint8Array => Uint8Array.from(values);

describe('decodeUtf8', () => {
  it('decodes UTF-8 and leaves out a byte order mark', () => {
    expect(decodeUtf8(bytes(0xef, 0xbb, 0xbf, 0xc3, 0xa9))).toEqual({ text: 'é', wrong: null });
    expect(decodeUtf8(bytes())).toEqual({ text: '', wrong: null });
  });

  it('says which byte on which line is the first that is wrong', () => {
    const latin = bytes(0x61, 0x0d, 0x0a, 0x62, 0x0d, 0x63, 0xe9, 0x0a);
    expect(decodeUtf8(latin)).toEqual({
      text: null,
      wrong: { line: 3, offset: 6, byte: 0xe9, guess: 'Latin-1' },
    });
  });

  it.each([
    ['with a mark, little-endian', bytes(0xff, 0xfe, 0x61, 0)],
    ['with a mark, big-endian', bytes(0xfe, 0xff, 0, 0x61)],
    ['without a mark', bytes(0x61, 0, 0x62, 0, 0x63, 0, 0x64, 0)],
  ])('guesses UTF-16 %s', (_, given) => {
    expect(decodeUtf8(given).wrong?.guess).toBe('UTF-16');
  });
});

describe('firstWrongByte', () => {
  // The Unicode Standard, table 3-7: overlong forms, surrogates and what lies beyond U+10FFFF are ill-formed.
  it.each([
    ['an overlong form', bytes(0xc0, 0x80), 0],
    ['an overlong form of three', bytes(0xe0, 0x80, 0x80), 0],
    ['a surrogate', bytes(0x61, 0xed, 0xa0, 0x80), 1],
    ['beyond U+10FFFF', bytes(0xf4, 0x90, 0x80, 0x80), 0],
    ['a sequence cut short', bytes(0x61, 0xe2, 0x82), 1],
    ['a stray continuation', bytes(0x80), 0],
    ['the last code point', bytes(0xf4, 0x8f, 0xbf, 0xbf), 4],
  ])('finds %s', (_, given, offset) => {
    expect(firstWrongByte(given)).toBe(offset);
  });
});
