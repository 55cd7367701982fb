/**
 * The chance that the invented demo is made of: a seeded generator, lots and normal deviates.
 * The generator is mulberry32 (Tommy Ettinger, 2017, public domain): 32 bits of state, ample for a few
 * hundred invented weights. It is kept apart from src/ so that the demo can be drawn again as it was.
 */
export type Chance = () => number;

/** A generator of uniform numbers in [0, 1) from a whole-number seed. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Draws the lots: a Fisher-Yates shuffle, from the last place to the first, leaving `lots` as it was. */
export function shuffled<Lot>(lots: readonly Lot[], next: Chance): Lot[] {
  const drawn = [...lots];
  for (let last = drawn.length - 1; last > 0; last -= 1) {
    const other = Math.floor(next() * (last + 1));
    [drawn[last], drawn[other]] = [drawn[other]!, drawn[last]!];
  }
  return drawn;
}

/** One standard normal deviate (Box and Muller, Annals of Mathematical Statistics 29, 1958, p. 610). */
export function normal(next: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** Takes the mean of each group out of `values`; `groups` names each value's group. */
export function centredWithin(values: readonly number[], groups: readonly string[]): number[] {
  const sums = new Map<string, { sum: number; n: number }>();
  values.forEach((value, index) => {
    const running = sums.get(groups[index]!) ?? { sum: 0, n: 0 };
    sums.set(groups[index]!, { sum: running.sum + value, n: running.n + 1 });
  });
  return values.map((value, index) => {
    const { sum, n } = sums.get(groups[index]!)!;
    return value - sum / n;
  });
}

/** Stretches deviates so that the root of (their sum of squares / degrees of freedom) is `spread`. */
export function scaledTo(spread: number, deviates: readonly number[], degreesOfFreedom: number): number[] {
  const sumOfSquares = deviates.reduce((sum, deviate) => sum + deviate * deviate, 0);
  if (sumOfSquares === 0) return [...deviates];
  const factor = spread / Math.sqrt(sumOfSquares / degreesOfFreedom);
  return deviates.map((deviate) => deviate * factor);
}
