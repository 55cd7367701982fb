import { say, sayCount } from '../model/say.ts';

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
 * Codes that mean the same in the published scales of leafy, root and cabbage vegetables, shortened; those with a
 * number in them are made below. From 60 on from memory.
 *
 * Reference: C. Feller et al. (1995), Phaenologische Entwicklungsstadien von Gemuesepflanzen, Nachrichtenblatt des
 * Deutschen Pflanzenschutzdienstes 47, as taken up in the monograph (the citation from memory).
 */
const codes: Readonly<Record<number, string>> = {
  0: 'dry seed',
  1: 'the seed begins to swell',
  3: 'the seed is swollen',
  5: 'the root has emerged from the seed',
  7: 'the shoot breaks through the seed coat',
  9: 'the seed leaves break through the surface',
  10: 'seed leaves fully unfolded',
  19: '9 or more true leaves unfolded',
  29: '9 or more side shoots visible',
  49: 'typical size reached',
  51: 'the main shoot begins to elongate',
  55: 'first flowers visible, still closed',
  59: 'first petals visible, flowers still closed',
  60: 'first flowers open',
  65: 'full flowering, half of the flowers open',
  67: 'flowering comes to its end, most petals fallen or dry',
  69: 'end of flowering',
};

/**
 * What a BBCH code says of a plant: its principal growth stage, and where the scales for vegetables agree on it the
 * stage within that; null for what is no code (a whole number from 0 to 99).
 *
 * @example growthStage(51) // "inflorescence emergence: the main shoot begins to elongate"
 */
export function growthStage(code: number): string | null {
  if (!Number.isInteger(code) || code < 0 || code > 99) return null;
  const principal = say(principalStages[Math.floor(code / 10)]!);
  const within = codes[code] === undefined ? counted(code) : say(codes[code]);
  return within === null ? principal : say('{principal}: {within}', { principal, within });
}

/** Codes whose second figure counts leaves or side shoots, or tens of a hundred. */
function counted(code: number): string | null {
  const figure = code % 10;
  if (figure === 0) return null;
  const percent = figure * 10;
  switch (Math.floor(code / 10)) {
    case 1:
      return sayCount(figure, '{count} true leaf unfolded', '{count} true leaves unfolded');
    case 2:
      return sayCount(figure, '{count} side shoot visible', '{count} side shoots visible');
    case 4:
      return say('about {percent}% of the size or mass that is expected', { percent });
    case 6:
      return figure < 5 ? say('about {percent}% of the flowers open', { percent }) : null;
    default:
      return null;
  }
}
