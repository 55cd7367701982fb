/** How units of weight are written by hand, and the unit that is meant. */
const written: Readonly<Record<string, readonly string[]>> = {
  g: ['g', 'gr', 'grs', 'gm', 'gms', 'gram', 'grams', 'gramo', 'gramos'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramo', 'kilogramos'],
  mg: ['mg'],
  oz: ['oz', 'ozs', 'ounce', 'ounces', 'onza', 'onzas'],
  lb: ['lb', 'lbs', 'pound', 'pounds', 'libra', 'libras'],
};

/** The unit of weight that a word means; null for none. */
export function weightUnit(word: string): string | null {
  const plain = word.toLowerCase().replace(/\.$/, '');
  return Object.keys(written).find((unit) => written[unit]!.includes(plain)) ?? null;
}

/** A unit of weight at the end of a heading or a cell, and what stands before it; the unit null where there is none. */
export function endingUnit(text: string): { rest: string; unit: string | null } {
  const [, rest = '', word = ''] = /^(.*?)[\s([,:]*([\p{L}]+)\.?[)\]\s]*$/su.exec(text) ?? [];
  const isApart = rest === '' || text.charAt(rest.length) !== word.charAt(0) || /\P{L}$/u.test(rest);
  const unit = isApart ? weightUnit(word) : null;
  return unit === null ? { rest: text, unit } : { rest: rest.trim().replace(/\s+(?:in|en)$/i, ''), unit };
}
