import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { generatedValidators, validatorsFile } from '../support/generate-validators.ts';

test('the compiled validators are those of the schemas; `npm run generate` writes them', () => {
  const written = readFileSync(new URL(`../../${validatorsFile}`, import.meta.url), 'utf8');
  expect(written === generatedValidators()).toBe(true);
});

test('the compiled validators make no code of text, which a page may not do', () => {
  const written = readFileSync(new URL(`../../${validatorsFile}`, import.meta.url), 'utf8');
  expect(written).not.toMatch(/new Function|\beval\(|\brequire\(/);
});
