import { expect, test } from 'vitest';
import { standardSquares } from '../../../src/compute/lots/standard-squares.ts';
import { isLatin } from './frequencies.ts';

test('there are as many standard squares as Fisher and Yates (1934) counted', () => {
  expect([1, 2, 3, 4, 5, 6].map((size) => standardSquares(size).length)).toEqual([1, 1, 1, 4, 56, 9408]);
});

test('each is a Latin square with its first row and column in order, and none comes twice', () => {
  for (const size of [1, 2, 3, 4, 5, 6]) {
    const squares = standardSquares(size);
    const inOrder = Array.from({ length: size }, (_, index) => index);
    expect(squares.every(isLatin)).toBe(true);
    expect(squares.every((square) => String(square[0]) === String(inOrder))).toBe(true);
    expect(squares.every((square) => String(square.map(([first]) => first)) === String(inOrder))).toBe(true);
    expect(new Set(squares.map(String)).size).toBe(squares.length);
    expect(squares.map(String)).toEqual(squares.map(String).sort());
  }
});

test('above six the cyclic square stands alone', () => {
  expect(standardSquares(7)).toHaveLength(1);
  expect(standardSquares(7)[0]?.[2]).toEqual([2, 3, 4, 5, 6, 0, 1]);
  expect(isLatin(standardSquares(9)[0]!)).toBe(true);
});

test('a size that is none throws with the value it refused', () => {
  expect(() => standardSquares(0)).toThrow('not 0');
  expect(() => standardSquares(2.5)).toThrow('not 2.5');
});
