/**
 * Controls, breaks of no width, and marks that turn the direction of what follows; beside a digit also the joiners
 * and direction marks that scripts other than Latin need.
 */
const unseen =
  /[^\P{Cc}\t\n\r]|[\u00ad\u200b\u2060-\u2064\ufeff\u202a-\u202e\u2066-\u2069\ufffc]|(?<=\d\s?)\p{Cf}|\p{Cf}(?=\s?\d)/u;

/** The first character of a text that nobody sees, and its offset; null where there is none. */
export function firstUnseen(text: string): { found: string; offset: number } | null {
  const match = unseen.exec(text);
  return match === null ? null : { found: match[0], offset: match.index };
}
