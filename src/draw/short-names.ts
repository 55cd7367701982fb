const initials = (name: string) =>
  name
    .split(/[^\p{L}\p{N}.]+/u)
    .filter((word) => word !== '')
    .map((word) => (/^[\d.]+$/.test(word) ? word : [...word][0]!.toUpperCase()))
    .join('');

/** What follows the words that all names share, behind the first letter: "P3" for Plants per pot 3. */
function differing(names: readonly string[]): (name: string) => string {
  const words = names.map((name) => name.split(' '));
  let shared = 0;
  while (words.every((each) => each.length > shared + 1 && each[shared] === words[0]![shared])) shared += 1;
  return (name) => (shared === 0 ? '' : [...name][0]!.toUpperCase() + name.split(' ').slice(shared).join(''));
}

const firstLetters = (name: string, count: number) =>
  [...name.replace(/[^\p{L}\p{N}]/gu, '')].slice(0, count).join('');

/**
 * A short form for each name, all different: what differs ("P3" for Plants per pot 3), else
 * initials ("CW" for Cobalt Wren), else first letters, else the
 * name's number in the list.
 */
export function shortNames(names: readonly string[]): Map<string, string> {
  const different = [...new Set(names)];
  const forms = [
    differing(different),
    initials,
    (name: string) => firstLetters(name, 3),
    (name: string) => firstLetters(name, 4),
  ];
  for (const form of forms) {
    const short = different.map(form);
    if (new Set(short).size === different.length && short.every((each) => each !== '' && each.length <= 5)) {
      return new Map(different.map((name, index) => [name, short[index]!]));
    }
  }
  return new Map(different.map((name, index) => [name, String(index + 1)]));
}
