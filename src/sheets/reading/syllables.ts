import exceptions from './syllable-exceptions.json' with { type: 'json' };

const known: Readonly<Record<string, number>> = exceptions;

/** Endings and pairs of vowels that are heard otherwise than they are written; each adds its number. */
const rules: readonly (readonly [RegExp, number])[] = [
  // A silent e: "scale", "scales", "weighed"; not "table", "boxes", "planted".
  [/[^aeiouy]e$/, -1],
  [/[^aeiouy]le$/, 1],
  [/[^aeiouycgsxzh]es$/, -1],
  [/(?:[^cst]h)es$/, -1],
  [/[^aeiouy]les$/, 1],
  [/[^aeiouytd]ed$/, -1],
  [/[^aeiouyl]led$/, 1],
  // Vowels side by side that are two: "trial", "period", "calcium", "video", "gradual", "variety", "nutrient", "being".
  [/[^aeiouycstg]ia/, 1],
  [/[^aeiouycstgx]io/, 1],
  [/tio$/, 1],
  [/iu/, 1],
  [/eo(?!u)/, 1],
  [/[^gqaeiou]ua/, 1],
  [/[^aeiou]iet|rient/, 1],
  [/[aeiouy]ing$/, 1],
  [/[aeiou]y[aeiou]/, 1],
  [/[aeiou]ism$|[^aeiou]ism$/, 1],
];

/**
 * The syllables of an English word, by its vowels as they are written and by what is known of endings. What
 * breaks the rules stands in a list. A number, and anything without a vowel, is one.
 *
 * @example syllables('nutrient') // 3
 */
export function syllables(word: string): number {
  const plain = word.toLowerCase().replaceAll('’', "'");
  const own = known[plain];
  if (own !== undefined) return own;
  const parts = plain.split('-').filter((part) => part !== '');
  if (parts.length > 1) return parts.reduce((sum, part) => sum + syllables(part), 0);
  const letters = plain.replace(/'(?:s|d|ll|re|ve|m)?$/, '').replaceAll(/[^a-z]/g, '');
  const heard = known[letters];
  if (heard !== undefined) return heard;
  const groups = letters.match(/[aeiouy]+/g)?.length ?? 0;
  if (groups < 1) return 1;
  // The y of "yield" and "beyond" is no vowel.
  const spoken = rules.reduce((sum, [pattern, add]) => (pattern.test(letters) ? sum + add : sum), groups);
  return Math.max(1, spoken);
}
