import { say } from '../model/say.ts';

/**
 * The principal growth stages of the general BBCH scale, by the first figure of the code.
 *
 * Reference: U. Meier (ed.) (2018), Growth Stages of Mono- and Dicotyledonous Plants: BBCH Monograph, Julius
 * Kuehn-Institut, section on the general scale. The wording is from memory.
 */
const principalStages: readonly string[] = [
  'germination, sprouting, bud development',
  'leaf development',
  'formation of side shoots or tillering',
  'stem elongation or rosette growth',
  'development of harvestable vegetative parts',
  'inflorescence emergence',
  'flowering',
  'development of fruit',
  'ripening of fruit and seed',
  'senescence, beginning of dormancy',
];

/**
 * What a BBCH code says of a plant's principal growth stage; null for what is no code (a whole number from 0 to
 * 99).
 *
 * @example growthStage(51) // "inflorescence emergence"
 */
export function growthStage(code: number): string | null {
  if (!Number.isInteger(code) || code < 0 || code > 99) return null;
  return say(principalStages[Math.floor(code / 10)]!);
}
