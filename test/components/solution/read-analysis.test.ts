import { expect, test } from 'vitest';
import {
  type AnalysisForm,
  readAnalysis,
  writeAnalysis,
} from '../../../src/components/solution/read-analysis.ts';
import { labelKeys, waterKeys } from '../../../src/model/nutrient-keys.ts';

const label: AnalysisForm = { keys: labelKeys, example: 'N 15.5, Ca 19', most: 100, grade: true };
const water: AnalysisForm = { keys: waterKeys, example: 'Ca 20, Mg 6', most: 100_000, grade: false };

function fault(text: string, form = label): string {
  const read = readAnalysis(text, form);
  return 'fault' in read ? read.fault : JSON.stringify(read.analysis);
}

test.each(['N 15.5, Ca 19', 'N: 15.5; Ca: 19', 'n=15.5% ca=19 %', '  N 15.5 Ca 19 '])(
  '%j is 15.5 of N and 19 of Ca',
  (text) => {
    const read = readAnalysis(text, label);
    expect(read).toEqual({ analysis: { N: 15.5, Ca: 19 } });
  },
);

test('a grade is N, P2O5 and K2O, and more may follow it', () => {
  expect(readAnalysis('5-11-26, Mg 3.1, S 4', label)).toEqual({
    analysis: { N: 5, P2O5: 11, K2O: 26, Mg: 3.1, S: 4 },
  });
  expect(readAnalysis('15.5-0-0 Ca 19', label)).toEqual({ analysis: { N: 15.5, P2O5: 0, K2O: 0, Ca: 19 } });
});

test('forms of nitrogen may be written with a hyphen, and ions in the water', () => {
  expect(readAnalysis('NO3-N 14.4, NH4_N 1.1', label)).toEqual({ analysis: { NO3_N: 14.4, NH4_N: 1.1 } });
  expect(readAnalysis('Ca 20 mg/L, HCO3 80 ppm, NO3 12', water)).toEqual({
    analysis: { Ca: 20, HCO3: 80, NO3: 12 },
  });
});

test('nothing written is nothing known', () => {
  expect(readAnalysis('  ', label)).toEqual({ analysis: {} });
});

test.each([
  ['N 15,5, Ca 19', '"15,5" has a decimal comma: write 15.5'],
  ['P205 11', '"P205" is not known: did you mean P2O5?'],
  ['N 15.5, N 3', 'N is written twice: leave one'],
  ['5-11-26, N 5', 'N is written twice: leave one'],
  ['N 155', 'N is 155, which is more than 100'],
  ['15.5 N', '"15.5 N" is not understood: write such as N 15.5, Ca 19'],
  ['N15.5, Ca19', '"N15.5" is not understood: write such as N 15.5, Ca 19'],
  ['N lots', '"N lots" is not understood: write such as N 15.5, Ca 19'],
  ['N 5 <script>', '"<script>" is not understood: write such as N 15.5, Ca 19'],
])('%j is refused with what to write', (text, message) => {
  expect(fault(text)).toBe(message);
});

test('a name of an object in the language is no nutrient', () => {
  expect(fault('constructor 3')).toMatch(/^"constructor" is not known/);
  expect(fault('__proto__ 3')).toMatch(/is not understood|is not known/);
});

test('what is written is read again as it was', () => {
  const analysis = { N: 5, NO3_N: 4.1, P2O5: 11 };
  expect(readAnalysis(writeAnalysis(analysis), label)).toEqual({ analysis });
});
