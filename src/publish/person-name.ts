/** A person's name, in the two parts that citation formats sort by. */
export interface PersonName {
  /** As a sentence writes it: given name first. */
  full: string;
  given: string | null;
  family: string;
}

/**
 * The parts of a name. `Family, Given` is split at its comma; in a name without one the family name is the
 * last word with any words in lower case before it (Ada van der Berg). A name of one word is a family name.
 */
export function personName(written: string): PersonName {
  const name = written.trim().replace(/\s+/g, ' ');
  const comma = name.indexOf(',');
  if (comma > 0 && comma < name.length - 1) {
    const family = name.slice(0, comma).trim();
    const given = name.slice(comma + 1).trim();
    return { full: `${given} ${family}`, given, family };
  }
  const words = name.split(' ');
  let from = words.length - 1;
  while (from > 1 && isParticle(words[from - 1] ?? '')) from -= 1;
  const given = words.slice(0, from).join(' ');
  return { full: name, given: given === '' ? null : given, family: words.slice(from).join(' ') };
}

const isParticle = (word: string): boolean => /^\p{Ll}/u.test(word);

/** `Family, Given`, as lists of authors sort it. */
export const sortedName = (name: PersonName): string =>
  name.given === null ? name.family : `${name.family}, ${name.given}`;
