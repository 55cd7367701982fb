import type { Nutrient } from '../../model/nutrient-keys.ts';
import { plainName } from './known-salts.ts';

/** Words of a salt's name, and what a salt so named must hold. */
const words: readonly (readonly [RegExp, readonly Nutrient[]])[] = [
  [/nitrate|nitric|saltpet/, ['N', 'NO3_N']],
  [/ammoni/, ['N', 'NH4_N']],
  [/\burea\b/, ['N', 'urea_N']],
  [/phosph|\bm[ka]p\b|\bdap\b/, ['P']],
  [/potass|potash|\bmkp\b/, ['K']],
  [/\bmap\b|\bdap\b/, ['N', 'NH4_N']],
  [/calcium|gypsum|\blime\b/, ['Ca']],
  [/magnes|epsom|bitter salt/, ['Mg']],
  [/sulf|epsom|bitter salt|gypsum/, ['S']],
  [/chlorid|muriat/, ['Cl']],
  [/\biron\b|\bferr/, ['Fe']],
  [/mangan/, ['Mn']],
  [/\bzinc/, ['Zn']],
  [/\bcopper|cupric/, ['Cu']],
  [/\bbor(ic|ax|on|ate)|tetraborate/, ['B']],
  [/molybd/, ['Mo']],
  [/\bsodium/, ['Na']],
  [/silic/, ['Si']],
  [/\bcobalt/, ['Co']],
  [/\bnickel/, ['Ni']],
  [/carbonate/, ['HCO3']],
];

/**
 * What a salt's name says that it holds: `Magnesium sulfate` holds Mg and S, whatever its label leaves out.
 * A brand name says nothing.
 */
export function heldByName(name: string): ReadonlySet<Nutrient> {
  const plain = plainName(name);
  return new Set(words.flatMap(([word, nutrients]) => (word.test(plain) ? nutrients : [])));
}

/**
 * The ion by which a salt so named changes the water's pH, which no label gives: the H+ of an acid, the OH- of a
 * hydroxide, silicate or carbonate; null for others, and for boric and organic acids, which hardly part with theirs.
 */
export function reactsByName(name: string): 'H' | 'OH' | null {
  const plain = plainName(name);
  if (/\b(nitric|phosphoric|sulfuric|hydrochloric)\b/.test(plain)) return 'H';
  return /hydroxide|silicate|(?<!bi)carbonate/.test(plain) ? 'OH' : null;
}
