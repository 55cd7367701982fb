import { expect, test } from 'vitest';
import { fileSize } from '../../src/publish/file-size.ts';

test('a size is said in powers of 1000', () => {
  expect(fileSize(999)).toBe('999\u00a0B');
  expect(fileSize(15_300)).toBe('15.3\u00a0kB');
  expect(fileSize(194_000)).toBe('194\u00a0kB');
  expect(fileSize(2_000_000)).toBe('2.0\u00a0MB');
});
