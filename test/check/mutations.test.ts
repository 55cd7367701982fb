import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { cultivars, goodFiles } from './good-folder.ts';

const context = { cultivars, today: '2026-01-15', prefix: '' };
const good = goodFiles();
const readings = 'date,container,level,added,ec\n2025-09-12,T1,9.8,,1.7\n2025-09-19,T1,8.1,4,1.6\n';
const texts = new Map([...good, ['readings.csv', readings]]);
const names = [...texts.keys()];

/** What wet sheets, tired hands and spreadsheets put into files. */
const scraps = [
  ...[
    ' ',
    ',',
    ';',
    '\t',
    '"',
    "'",
    '\n',
    '\r',
    '\r\n',
    '\0',
    '\ufeff',
    '\u00a0',
    '\u200b',
    '=',
    '-',
    '.',
    '0',
    '1',
  ],
  ...[
    '9',
    'O',
    'g',
    '１',
    '١',
    'é',
    '𝟏',
    '#',
    ':',
    '- ',
    '[',
    ']',
    '{',
    '}',
    '&a ',
    '*a',
    '!x ',
    '~',
    'null',
    'true',
  ],
  ...['1e999', 'NaN', '__proto__', 'constructor', 'T1', 'dead', '---\n', '\ud800'],
];

type Slip = (text: string) => string;

const slip: fc.Arbitrary<Slip> = fc
  .tuple(
    fc.nat(8),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.constantFrom(...scraps),
  )
  .map(
    ([kind, where, other, scrap]) =>
      (text) =>
        change(text, kind, where, other, scrap),
  );

function change(text: string, kind: number, where: number, other: number, scrap: string): string {
  const at = Math.floor(where * text.length);
  const lines = text.split('\n');
  const line = Math.floor(where * lines.length);
  const second = Math.floor(other * lines.length);
  if (kind <= 1) return text.slice(0, at) + scrap + text.slice(at);
  if (kind === 2) return text.slice(0, at) + text.slice(at + 1);
  if (kind === 3) return text.slice(0, at) + scrap + text.slice(at + 1 + Math.floor(other * 4));
  if (kind === 4) return lines.toSpliced(line, 1).join('\n');
  if (kind === 5) return lines.toSpliced(second, 0, lines[line] ?? '').join('\n');
  if (kind === 6)
    return lines
      .with(Math.min(line, lines.length - 1), lines[Math.min(second, lines.length - 1)] ?? '')
      .join('\n');
  if (kind === 7) return text.slice(0, at);
  return text.replaceAll(text.charAt(at) || ' ', scrap);
}

/** The digits of each weight as they stand in the file, found by splitting lines and not by the code under test. */
function weightsInFile(text: string): Map<number, string> {
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const isHeading = (cells: string[]): boolean => cells.includes('fresh_weight');
  const heading = lines
    .map((line) => line.split(',').map((cell) => cell.replaceAll(/^[" \t]+|[" \t]+$/g, '')))
    .find(isHeading);
  const column = heading?.indexOf('fresh_weight') ?? -1;
  return new Map(
    lines.map((line, index) => [
      index + 1,
      (line.split(',')[column] ?? '').replaceAll(/^[" \t]+|[" \t]+$/g, ''),
    ]),
  );
}

describe('a good folder with slips in it', () => {
  it('is checked without an exception, and what is accepted holds the weights of the file', () => {
    let accepted = 0;
    const cases = fc.array(fc.tuple(fc.constantFrom(...names), slip), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(cases, (slips) => {
        const changed = new Map(texts);
        for (const [name, make] of slips) changed.set(name, make(changed.get(name) ?? ''));
        const files = new Map([...changed].map(([name, text]) => [name, new TextEncoder().encode(text)]));
        const { trial, problems } = checkTrial('two-lettuces', files, context);
        for (const problem of problems) expect(printProblem(problem)).not.toContain('\n');
        if (trial === null) {
          expect(problems.some(({ severity }) => severity === 'error')).toBe(true);
          return;
        }
        accepted += 1;
        const inFile = weightsInFile(changed.get('harvest.csv') ?? '');
        for (const { line, values, status } of trial.harvest) {
          const weight = values['fresh_weight'] ?? null;
          const cell = inFile.get(line) ?? '';
          if (/[^\d.]/.test(cell)) continue;
          expect(weight === null ? '' : String(weight)).toBe(cell === '' ? '' : String(Number(cell)));
          expect(weight !== null || status !== 'weighed').toBe(true);
        }
      }),
      { numRuns: 5000, seed: 20250912 },
    );
    // The slips must leave some folders good, or the second half of the property says nothing.
    expect(accepted).toBeGreaterThan(100);
  }, 240_000);
});
