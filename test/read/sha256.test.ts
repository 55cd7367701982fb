import { hash } from 'node:crypto';
import { expect, it } from 'vitest';
import { sha256 } from '../../src/read/sha256.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

it('gives the examples of FIPS 180-4', () => {
  expect(sha256(bytes('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(sha256(bytes('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'))).toBe(
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  );
});

it('agrees with Node at every length about the ends of blocks', () => {
  const all = Uint8Array.from({ length: 400 }, (_, index) => (index * 31 + 7) & 255);
  for (let length = 0; length < 260; length += 1) {
    const part = all.subarray(3, 3 + length);
    expect(sha256(part)).toBe(hash('sha256', part, 'hex'));
  }
});
