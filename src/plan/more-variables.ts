import { say } from '../model/say.ts';
import type { Variable } from '../model/trial.ts';

/** What can be recorded of each plant beside its weight. */
export const recordable = [
  'leaves',
  'height',
  'tip_burn',
  'colour',
  'taste',
  'stage',
  'bolted',
  'bolting',
] as const;
export type Recordable = (typeof recordable)[number];

/** Each with what it is, for a form. */
export function recordChoices(): { value: Recordable; text: string }[] {
  const words: Readonly<Record<Recordable, string>> = {
    leaves: say('leaves, counted'),
    height: say('height, in cm'),
    tip_burn: say('tip burn, scored 0 to 5'),
    colour: say('colour, scored 1 (very light) to 9 (very dark)'),
    taste: say('liking of the taste, scored 1 to 9 by each taster, blind'),
    stage: say('growth stage, by BBCH code'),
    bolted: say('bolted, yes or no'),
    bolting: say('days from sowing to first bolting'),
  };
  return recordable.map((value) => ({ value, text: words[value] }));
}

/**
 * The variables that were chosen. The steps of tip burn are common practice, no source.
 *
 * @param tasters who scores the taste, by name; at least one where it is chosen
 */
export function moreVariables(chosen: readonly Recordable[], tasters: readonly string[]): Variable[] {
  return recordable.filter((one) => chosen.includes(one)).flatMap((one) => variablesOf(one, tasters));
}

function variablesOf(one: Recordable, tasters: readonly string[]): Variable[] {
  const scored = { of: 'plant', kind: 'scored' } as const;
  switch (one) {
    case 'leaves':
      return [{ id: one, name: say('Leaves'), of: 'plant', kind: 'counted', lowest: 1, highest: 100 }];
    case 'height':
      return [{ id: one, name: say('Height'), of: 'plant', kind: 'measured', unit: 'cm', resolution: 0.5 }];
    case 'tip_burn':
      return [{ id: one, name: say('Tip burn'), ...scored, marks: tipBurn() }];
    case 'colour':
      return [{ id: one, name: say('Colour'), ...scored, marks: oneToNine(lightToDark()) }];
    case 'taste':
      return tasters.map((judge, index) => ({
        id: `${one}_${String(index + 1)}`,
        name: say('Taste'),
        ...scored,
        marks: oneToNine(liking()),
        panel: say('Taste'),
        judge,
        blind: true,
      }));
    case 'stage':
      return [{ id: one, name: say('Growth stage'), ...scored, scale: 'BBCH' }];
    case 'bolted':
      return [{ id: one, name: say('Bolted'), ...scored, scale: 'yes or no' }];
    case 'bolting':
      return [
        { id: `${one}_days`, name: say('Days to first bolting'), of: 'plant', kind: 'counted', unit: 'd' },
      ];
  }
}

function tipBurn(): Record<string, string> {
  return {
    0: say('none'),
    1: say('edges of single leaves'),
    2: say('edges of a quarter of the leaves'),
    3: say('half of the leaves'),
    4: say('most leaves'),
    5: say('all leaves'),
  };
}

/** The nine steps of liking of D. R. Peryam and F. J. Pilgrim (1957), Food Technology 11 (9), 9-14; from memory. */
function liking(): string[] {
  return [
    say('dislike extremely'),
    say('dislike very much'),
    say('dislike moderately'),
    say('dislike slightly'),
    say('neither like nor dislike'),
    say('like slightly'),
    say('like moderately'),
    say('like very much'),
    say('like extremely'),
  ];
}

/** Nine steps of which every other one lies between its neighbours (common practice in describing cultivars, no source). */
function lightToDark(): string[] {
  return [
    say('very light'),
    say('very light to light'),
    say('light'),
    say('light to medium'),
    say('medium'),
    say('medium to dark'),
    say('dark'),
    say('dark to very dark'),
    say('very dark'),
  ];
}

const oneToNine = (words: readonly string[]): Record<string, string> =>
  Object.fromEntries(words.map((word, index) => [String(index + 1), word]));
