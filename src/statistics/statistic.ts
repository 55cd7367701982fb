/**
 * What a statistic of recorded data comes back as: its value with the number of values it rests on and the
 * number missing, or null with the reason in plain words. Never NaN, never a silent 0.
 */
export type Statistic =
  { value: number; n: number; missing: number } | { value: null; reason: string; n: number; missing: number };

/** Recorded data: a number, or null where the plant, pot or plot has no value. */
export type Recorded = readonly (number | null)[];

/**
 * Splits recorded data into the numbers present and a count of those missing.
 * Throws for NaN and infinities: those are a programmer's error, a missing value is null.
 */
export function present(values: Recorded, caller: string): { numbers: number[]; missing: number } {
  const numbers: number[] = [];
  let missing = 0;
  for (const value of values) {
    if (value === null) missing += 1;
    else if (Number.isFinite(value)) numbers.push(value);
    else
      throw new RangeError(
        `${caller} requires finite numbers, or null where a value is missing; not ${value}`,
      );
  }
  return { numbers, missing };
}

/**
 * Applies a kernel that needs at least `least` numbers to recorded data.
 */
export function statisticOf(
  values: Recorded,
  name: string,
  least: number,
  kernel: (numbers: readonly number[]) => number,
): Statistic {
  const { numbers, missing } = present(values, name);
  const n = numbers.length;
  if (n >= least) return { value: kernel(numbers), n, missing };
  const words = ['no values', 'one value', 'two values'];
  const needed = words[least] ?? `${least} values`;
  const found = n === 0 ? 'none is' : `${n} ${n === 1 ? 'is' : 'are'}`;
  return { value: null, reason: `${name} needs at least ${needed}, and ${found} present`, n, missing };
}
