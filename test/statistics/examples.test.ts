import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/*
 * Every example in the docstrings of src/statistics is run. Its form is `@example expression // value`, the
 * value a number, text, list or object, then after a comma or colon any remark. A number with decimals is met to
 * half its last printed digit, or to 1e-12 relative where it is printed to 13 digits or more.
 */
const folder = new URL('../../src/statistics/', import.meta.url);
const modules = import.meta.glob<Record<string, unknown>>('../../src/statistics/**/*.ts');

interface Example {
  file: string;
  expression: string;
  value: string;
}

/** The value at the start of a remark: up to the bracket that closes the first, else the first word. */
function leadingValue(text: string): string {
  if (!/^[[{(]/.test(text)) return /^-?[\w.+-]+|^'[^']*'/.exec(text)?.[0].replace(/\.$/, '') ?? '';
  let depth = 0;
  for (let index = 0; index < text.length; index += 1) {
    if ('[{('.includes(text[index]!)) depth += 1;
    if (']})'.includes(text[index]!)) depth -= 1;
    if (depth === 0) return text.slice(0, index + 1);
  }
  return text;
}

function examplesOf(file: string): Example[] {
  const source = readFileSync(new URL(file, folder), 'utf8');
  const found = source.matchAll(/@example ([\s\S]*?) \/\/ (.*)/g);
  return [...found].map(([, expression, remark]) => ({
    file,
    expression: expression!.replace(/\s*\n\s*\* ?/g, ' '),
    value: leadingValue(remark!),
  }));
}

const examples = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .flatMap(examplesOf);

/** Half the last digit of the least precise decimal printed, as the tolerance of the whole value. */
function toleranceOf(value: string): number {
  const decimals = [...value.matchAll(/\d*\.(\d+)/g)].map((match) => match[1]!.length);
  const fewest = Math.min(...decimals);
  return decimals.length === 0 || fewest >= 12 ? 1e-12 : 0.5001 * 10 ** -fewest;
}

function expectAlike(actual: unknown, expected: unknown, tolerance: number): void {
  if (typeof expected === 'number' && typeof actual === 'number') {
    expect(Math.abs(actual - expected)).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(expected)));
  } else if (Array.isArray(expected)) {
    const list = ArrayBuffer.isView(actual) ? Array.from(actual as Float64Array) : (actual as unknown[]);
    expect(list).toHaveLength(expected.length);
    expected.forEach((item, index) => {
      expectAlike(list[index], item, tolerance);
    });
  } else if (typeof expected === 'object' && expected !== null) {
    for (const [key, item] of Object.entries(expected)) {
      expectAlike((actual as Record<string, unknown>)[key], item, tolerance);
    }
  } else {
    expect(actual).toEqual(expected);
  }
}

const evaluate = (code: string, names: Record<string, unknown>): unknown =>
  (
    new Function(...Object.keys(names), `"use strict"; return (${code});`) as (
      ...values: unknown[]
    ) => unknown
  )(...Object.values(names));

test('there are examples to run', () => {
  expect(examples.length).toBeGreaterThan(30);
});

test.each(examples)('$file: $expression // $value', async ({ file, expression, value }) => {
  const exported = await modules[`../../src/statistics/${file}`]!();
  expect(value).not.toBe('');
  expectAlike(evaluate(expression, exported), evaluate(value, {}), toleranceOf(value));
});
