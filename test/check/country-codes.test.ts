import { describe, expect, it } from 'vitest';
import { countryCodes, mistakenCodes } from '../../src/check/country-codes.ts';

describe('the country codes', () => {
  const names = new Intl.DisplayNames('en', { type: 'region', fallback: 'none' });

  it('are the 249 of ISO 3166-1 and XK, each known to the JavaScript engine', () => {
    expect(countryCodes.size).toBe(250);
    for (const code of countryCodes) expect(names.of(code), code).toBeDefined();
  });

  it('lack no country that the engine knows, but for what is no country of the standard or is one no more', () => {
    const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
    const engine = letters
      .flatMap((a) => letters.map((b) => a + b))
      .filter((code) => names.of(code) !== undefined);
    // Reserved or private codes, groupings, and countries that are no more (CLDR's region codes), from memory.
    const others = new Set(
      'AC AN BU CP CQ CS DD DG DY EA EU EZ FX HV IC NH QO RH SU TA TP UK UN VD XA XB YD YU ZR ZZ'.split(' '),
    );
    expect(engine.filter((code) => !countryCodes.has(code) && !others.has(code))).toEqual([]);
  });

  it('never take a code of the standard for a mistake, and mean one', () => {
    for (const [code, meant] of Object.entries(mistakenCodes)) {
      expect(countryCodes.has(code), code).toBe(false);
      expect(countryCodes.has(meant), meant).toBe(true);
    }
  });
});
