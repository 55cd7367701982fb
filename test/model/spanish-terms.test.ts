import { describe, expect, it } from 'vitest';
import meanings from '../../src/model/meanings.json' with { type: 'json' };
import messages from '../../src/model/messages.json' with { type: 'json' };

const told = Object.entries<{ es: string }>({ ...messages, ...meanings });

/** One Spanish word for one thing: where the English says the first, the Spanish says the second. */
const terms: readonly [english: RegExp, spanish: RegExp][] = [
  [/\bfact sheets?\b/i, /\bhojas?\b/i],
  [/\bfindings?\b/i, /resultado/i],
  [/standard errors?/i, /errore?s? estándar/i],
  [/standard deviation/i, /desviaci(?:ón|ones) estándar/i],
  [/adjusted means?/i, /medias? ajustadas?/i],
  [/degrees of freedom/i, /grados de libertad/i],
  [/two-sided/i, /bilateral/i],
  [/experimental units?/i, /unidad(?:es)? experimental/i],
  [/completely randomised/i, /completamente al azar|completely randomised/i],
  [/randomised blocks/i, /bloques al azar|randomised blocks/i],
  [/growth stages?/i, /estadios? de crecimiento/i],
  [/source water/i, /agua de origen/i],
  [/tip burn/i, /quemadura de bordes/i],
  [/split plot/i, /parcelas divididas|split plot/i],
  [/main plots?/i, /parcelas? principal/i],
  [/open quer(?:y|ies)/i, /dudas? abiertas?/i],
  [/decimal marks?/i, /signos? decimal/i],
  [/weighing sheets?/i, /hojas? de pesada/i],
  [/\bculled\b/i, /descart|culled/i],
  [/transplant/i, /trasplant|transplant/i],
  [/\bgrids?\b/i, /cuadrícula/i],
  [/\bcomputers?\b/i, /ordenador/i],
  [/command line/i, /línea de órdenes/i],
];

/** Words of other places for what has a word here. */
const others =
  /típic[oa]s? de|errore?s? típicos?|desviaci(?:ón|ones) típicas?|hallazgo|computador|línea de comandos|fichero|como mucho|a (?:una|dos) colas|\bdeslices\b|\bdesliz\b|báscula/i;

describe('The Spanish words', () => {
  it.each(terms)('have one term for %s', (english, spanish) => {
    const found = told.filter(([text]) => english.test(text));
    expect(found.length).toBeGreaterThan(0);
    expect(found.filter(([, { es }]) => !spanish.test(es)).map(([text]) => text)).toEqual([]);
  });

  it('stand in the quotation marks of Spanish', () => {
    expect(told.filter(([, { es }]) => /[“”]/.test(es)).map(([text]) => text)).toEqual([]);
  });

  it('have no second word for one of them', () => {
    expect(told.filter(([, { es }]) => others.test(es)).map(([text]) => text)).toEqual([]);
  });
});
