import { describe, expect, it } from 'vitest';
import { tell } from '../../../src/compute/words/tell.ts';
import { plainText } from '../../../src/compute/words/words.ts';
import { inLanguage } from '../../../src/model/language.ts';
import '../../../src/model/messages.ts';

const message = '{most} weighed most, {highest}{per} on average, and {least} least, {lowest}.';
const values = { most: 'Cobalt Wren', highest: '140 g', per: '', lowest: '120 g' };

describe('tell', () => {
  it('puts values in the order of the language, and keeps quantities in both units', () => {
    const both = { metric: '140 g', us: '4.94 oz' };
    expect(tell(message, { ...values, highest: both, least: 'Slate Egret' })).toEqual([
      'Cobalt Wren weighed most, ',
      both,
      ' on average, and Slate Egret least, 120 g.',
    ]);
  });

  it('joins by e in Spanish where the next word begins with the sound of y, though it is within longer text', () => {
    const told = (least: string | readonly string[]): string =>
      inLanguage('es', () => plainText(tell(message, { ...values, least })));
    expect(told('Iceberg')).toBe(
      'Cobalt Wren fue el que más pesó, 140 g de media, e Iceberg el que menos, 120 g.',
    );
    expect(told(['Iceberg'])).toContain(', e Iceberg el que menos');
    expect(told('Slate Egret')).toContain(', y Slate Egret el que menos');
  });

  it('refuses a message without one of its values', () => {
    expect(() => tell(message, values)).toThrow('tell was not given "least"');
  });
});
