import type { Treatment } from '../model/trial.ts';

const kept = new WeakMap<Treatment, string>();

/** `cultivar slate-egret, strength 1`; a text that is the same exactly for the same treatments. */
export function treatmentInWords(treatment: Treatment): string {
  const before = kept.get(treatment);
  if (before !== undefined) return before;
  const words = Object.entries(treatment)
    .map(([factor, level]) => `${factor} ${level}`)
    .join(', ');
  kept.set(treatment, words);
  return words;
}

/** A keeper of treatments: like ones are given back as one object, of which a large layout has few. */
export function treatmentKeeper(factors: readonly string[]): (levels: readonly string[]) => Treatment {
  const known = new Map<string, Treatment>();
  return (levels) => {
    const key = levels.length === 1 ? levels[0]! : levels.join('\0');
    let treatment = known.get(key);
    if (treatment === undefined) {
      treatment = Object.fromEntries(factors.map((factor, index) => [factor, levels[index] ?? '']));
      known.set(key, treatment);
    }
    return treatment;
  };
}
