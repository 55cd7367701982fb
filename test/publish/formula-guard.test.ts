import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { guardedText, unguardedText } from '../../src/publish/formula-guard.ts';

describe('guardedText', () => {
  test.each(['=1+1', '+1+cmd', '-2+3', '@SUM(A1)', '\tx', '\rx', ' =1', '＝1', '－x'])(
    'puts an apostrophe before %j',
    (text) => expect(guardedText(text)).toBe(`'${text}`),
  );
  test.each(['', 'bolted', '-5', '+3.5', 'a - b', 'T1-a', "it's fine", 'cool; -5 degrees'])(
    'leaves %j as it is',
    (text) => expect(guardedText(text)).toBe(text),
  );
  test('guards what follows a separator that some spreadsheets split at', () => {
    expect(guardedText('ok;=1+1')).toBe(`ok;'=1+1`);
    expect(guardedText('ok\n=1+1')).toBe(`ok\n'=1+1`);
  });
  test('loses nothing: taking the apostrophes off gives the text back, whatever it was', () => {
    const nasty = fc.string({
      unit: fc.constantFrom("'", '=', '-', ';', '\t', '\n', '\r', ' ', '1', '.', 'a', '＝'),
    });
    fc.assert(fc.property(fc.oneof(nasty, fc.string()), (text) => unguardedText(guardedText(text)) === text));
  });
  test('leaves nothing that opens a formula at a start', () => {
    const nasty = fc.string({ unit: fc.constantFrom("'", '=', '+', '@', ';', '\t', '\n', ' ', 'a') });
    fc.assert(fc.property(nasty, (text) => !/(?:^\s*|[;\t\r\n])[=+@]/.test(guardedText(text))));
  });
});
