import { afterAll } from 'vitest';
import { type FromR, openR, type R, type ToR } from './webr.ts';

let started: Promise<R> | undefined;

/** The R of this test file, started at the first call and closed after the file's last test. */
export function sharedR(): Promise<R> {
  started ??= openR();
  return started;
}

afterAll(async () => {
  if (started) (await started).close();
  started = undefined;
});

/**
 * Runs R code in the shared R and returns its last value as JavaScript, never through printed text.
 * A vector of one element is a scalar, a longer one an array, a named vector or list an object, a matrix an
 * array of rows, a data frame an object of columns, a factor its labels, NA null.
 *
 * `given` hands values to R by name, doubles bit for bit.
 *
 *     await runR('list(mean = mean(x), tail = pt(2, 5, lower.tail = FALSE))', { x: [1, 2, 4] })
 */
export async function runR(code: string, given?: Record<string, ToR>): Promise<FromR> {
  return (await sharedR()).run(code, given);
}

/** As runR, for code whose value is a number. */
export async function numberFromR(code: string, given?: Record<string, ToR>): Promise<number> {
  const value = await runR(code, given);
  if (typeof value !== 'number') throw new Error(`R gave ${JSON.stringify(value)}, not a number`);
  return value;
}

/** As runR, for code whose value is a numeric vector; one element comes back as an array of one. */
export async function numbersFromR(code: string, given?: Record<string, ToR>): Promise<number[]> {
  const value = await runR(code, given);
  const list = Array.isArray(value) ? value : [value];
  return list.map((item) => {
    if (typeof item !== 'number') throw new Error(`R gave ${JSON.stringify(item)}, not a number`);
    return item;
  });
}

/** As runR, for code whose value is a named list or vector of numbers. */
export async function namedNumbersFromR(
  code: string,
  given?: Record<string, ToR>,
): Promise<Record<string, number>> {
  const value = await runR(code, given);
  if (value === null || typeof value !== 'object' || Array.isArray(value)) {
    throw new Error(`R gave ${JSON.stringify(value)}, not named numbers`);
  }
  return Object.fromEntries(
    Object.entries(value).map(([name, item]) => {
      if (typeof item !== 'number')
        throw new Error(`R gave ${JSON.stringify(item)} for ${name}, not a number`);
      return [name, item];
    }),
  );
}
