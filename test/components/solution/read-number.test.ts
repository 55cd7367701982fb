import { expect, test } from 'vitest';
import { readNumber } from '../../../src/components/solution/read-number.ts';

const fault = (text: string, limits = {}): string => {
  const read = readNumber(text, limits);
  return 'fault' in read ? read.fault : `read as ${String(read.value)}`;
};

test('digits with or without a point are a number', () => {
  expect(readNumber(' 1.5 ')).toEqual({ value: 1.5 });
  expect(readNumber('0')).toEqual({ value: 0 });
  expect(readNumber('007')).toEqual({ value: 7 });
});

test.each([
  ['1,5', '"1,5" has a decimal comma: write 1.5'],
  ['0,125', '"0,125" has a decimal comma: write 0.125'],
  ['1,250', '"1,250" has a comma: write 1.250, or 1250 where it parts the thousands'],
  ['50 L', '"50 L" has a unit typed in: write the number alone, in the unit of the field'],
  ['645 mg', '"645 mg" has a unit typed in: write the number alone, in the unit of the field'],
  ['1/2', '"1/2" is a fraction: write 0.5'],
  ['1/0', '"1/0" is not a number: write digits only, such as 1.5'],
  ['-3', '"-3" is below nothing: write it without the sign'],
  ['.5', '".5" has no digit before its point: write 0.5'],
  ['5.', '"5." has no digit behind its point: write 5'],
  ['1 000', '"1 000" has spaces or marks between its digits: write 1000'],
  ['1e3', '"1e3" is not a number: write digits only, such as 1.5'],
  ['half', '"half" is not a number: write digits only, such as 1.5'],
  ['', 'Nothing is written here: write a number, such as 1.5'],
])('%j is refused with what to write', (text, message) => {
  expect(fault(text)).toBe(message);
});

test('what is out of all measure is refused with the limit', () => {
  expect(fault('0', { above: true })).toBe('"0" is too little: write more than 0');
  expect(fault('0.5', { least: 1 })).toBe('"0.5" is too little: write 1 or more');
  expect(fault('2000000')).toBe('"2000000" is too much: write at most 1000000');
  expect(fault('9'.repeat(400))).toContain('too much');
});
