import { strToU8 } from 'fflate';
import { expect, test } from 'vitest';
import { excerpts } from '../../src/check/excerpt.ts';

const of = (
  text: string | Uint8Array,
  line: number | null,
  column: number | null,
  found: string | null = null,
) =>
  excerpts(() => (typeof text === 'string' ? strToU8(text) : text))({ file: 'a.csv', line, column, found });

test('what was found is set apart in its line', () => {
  expect(of('a,b\nT1,12O,x\n', 2, 4, '12O')).toEqual({ before: 'T1,', marked: '12O', after: ',x' });
});

test('where the line does not say it in the same letters, the cell or word at the column is set apart', () => {
  expect(of('a\nT1,"1 2",x\n', 2, 4, '1 2')).toEqual({ before: 'T1,', marked: '"1 2"', after: ',x' });
  expect(of('rows: 3x4 here', 1, 7)).toEqual({ before: 'rows: ', marked: '3x4', after: ' here' });
});

test('columns count characters, and unseen ones are shown', () => {
  expect(of('🌱,1\u00a05,x', 1, 3, '1\u00a05')).toEqual({ before: '🌱,', marked: '1\\u{a0}5', after: ',x' });
});

test('a long line is cut on both sides', () => {
  const excerpt = of(`${'a'.repeat(500)},12O,${'b'.repeat(500)}`, 1, 502, '12O')!;
  expect(excerpt.marked).toBe('12O');
  expect(excerpt.before).toMatch(/^…a{59},$/);
  expect(excerpt.after).toMatch(/^,b{59}…$/);
});

test('there is none without a line, beyond the file, of an empty line or without the file', () => {
  expect(of('a\n\n', null, null)).toBeNull();
  expect(of('a\n\n', 2, 1)).toBeNull();
  expect(of('a', 9, 1)).toBeNull();
  expect(excerpts(() => undefined)({ file: 'a', line: 1, column: 1, found: null })).toBeNull();
});

test('a file that is no UTF-8 is shown as it would be read by mistake', () => {
  expect(of(new Uint8Array([0x63, 0x61, 0x66, 0xe9]), 1, null)).toEqual({
    before: '',
    marked: '',
    after: 'café',
  });
});
