import type { Seasons } from '../../model/generated/seasons.ts';
import { say } from '../../model/say.ts';

const words: Readonly<Record<Seasons['measure'], string>> = {
  per_pot: 'per pot',
  per_plant_set: 'per plant set',
  kg_per_m2: 'by area',
};

/**
 * What a comparison across seasons is of, in words: what was weighed and for what it is reckoned.
 *
 * @example measureAcrossSeasons(entry) // "fresh weight per plant set"
 */
export function measureAcrossSeasons({ measure, trials }: Pick<Seasons, 'measure' | 'trials'>): string {
  const variables = [...new Set(trials.map(({ variable }) => variable.toLowerCase()))];
  return `${variables.length === 1 ? variables[0]! : say('yield')} ${say(words[measure])}`;
}
