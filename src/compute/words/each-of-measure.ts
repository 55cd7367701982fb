import type { Seasons } from '../../model/generated/seasons.ts';
import { say } from '../../model/say.ts';

const each: Readonly<Record<Seasons['measure'], string>> = {
  per_pot: 'a pot',
  per_plant_set: 'a plant',
  kg_per_m2: '',
};

/** What stands behind a quantity of a comparison, as in "12 g a pot"; nothing where its unit says it already. */
export const eachOf = (measure: Seasons['measure']): string =>
  each[measure] === '' ? '' : ` ${say(each[measure])}`;
