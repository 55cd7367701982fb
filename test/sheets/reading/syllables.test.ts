import { describe, expect, it } from 'vitest';
import { syllables } from '../../../src/sheets/reading/syllables.ts';

/** As spoken; counted by ear, words of fact sheets among them. */
const spoken: Readonly<Record<number, string>> = {
  1: 'the tank weighed plant pots leaves scale cut grew yield rain shelter:2 weights plates once seed feed year week head through light mean range those whose stage pounds ounce:1 sized cleaned rinsed size hour strength',
  2: 'water trial tables boxes planted harvest autumn lettuce basil gram:1 solution:3 nitrate weather being people growers tested trials places labels:2 cages bottle bottles sheet:1 summer grower better neighbour nutrients:3 little player needed added wetted handled settled',
  3: 'cultivar nutrient potassium:4 calcium material:4 gradual different average area however seventy bolting:2 container difference:3 replicate interval several period:3 phosphorus:3 nitrogen containers gardener experiment:4 magnesium:4 recipe',
  4: 'information material experiment variety potassium vegetable especially:4 temperature magnesium fertiliser:4 gradually:4 usually',
};

const words = Object.entries(spoken).flatMap(([count, list]) =>
  list.split(' ').map((each): [string, number] => {
    const [word = '', own] = each.split(':');
    return [word, Number(own ?? count)];
  }),
);

describe('syllables', () => {
  it.each(words)('hears %s as %i', (word, count) => {
    expect(syllables(word)).toBe(count);
  });

  it('adds the parts of a joined word, and takes a number for one', () => {
    expect(syllables('still-water')).toBe(3);
    expect(syllables('152')).toBe(1);
    expect(syllables('grower’s')).toBe(2);
  });

  it('has more than a hundred words to answer for', () => {
    expect(words.length).toBeGreaterThan(100);
  });
});
