import { crc32 as reference } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { crc32 } from '../../src/read/crc32.ts';

test('the check value of CRC-32/ISO-HDLC, over the digits 1 to 9, is cbf43926', () => {
  expect(crc32(new TextEncoder().encode('123456789')).toString(16)).toBe('cbf43926');
});

test('agrees with zlib on any bytes', () => {
  fc.assert(fc.property(fc.uint8Array({ maxLength: 3000 }), (bytes) => crc32(bytes) === reference(bytes)));
});
