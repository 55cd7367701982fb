/** Text as R reads it: nothing that a trial says can end a string, a name or a comment. */

/** A string constant of R in plain ASCII: everything else is written as its code point. */
export function rString(text: string): string {
  const characters = [...text.toWellFormed()].map((character) => {
    const code = character.codePointAt(0)!;
    if (character === '"' || character === '\\') return `\\${character}`;
    if (code >= 0x20 && code <= 0x7e) return character;
    // R strings cannot hold code point 0.
    return code === 0 ? ' ' : `\\U{${code.toString(16)}}`;
  });
  return `"${characters.join('')}"`;
}

/** A character vector of R; `character(0)` where there is none. */
export function rStrings(texts: readonly string[]): string {
  return texts.length === 0 ? 'character(0)' : `c(${texts.map(rString).join(', ')})`;
}

/** A number of R, to the last bit. */
export function rNumber(value: number): string {
  return Number.isInteger(value) && Math.abs(value) < 1e15 ? String(value) : String(value).replace('e+', 'e');
}

/** A named vector of R from names and finished values. */
export function rNamed(entries: readonly (readonly [string, string])[], how = 'c'): string {
  return `${how}(${entries.map(([name, value]) => `${rString(name)} = ${value}`).join(', ')})`;
}

const reserved = new Set(
  'if else repeat while function for next break TRUE FALSE NULL Inf NaN NA NA_integer_ NA_real_ NA_complex_ NA_character_ in'.split(
    ' ',
  ),
);

/** A column's id as a name in a formula of R. Ids are letters, digits and underscores, a letter or a dot first. */
export function rName(id: string): string {
  if (!/^[A-Za-z.][A-Za-z0-9_.]*$/.test(id)) throw new Error(`rName requires a column's id, not "${id}"`);
  return reserved.has(id) ? `\`${id}\`` : id;
}

/** Lines of comment: one line of text, in lines of at most `width` characters where its words allow. */
export function rComment(text: string, width = 96): string {
  const words = text
    .toWellFormed()
    .replace(/[\p{C}\p{Z}\s]+/gu, ' ')
    .trim()
    .split(' ');
  const lines: string[] = [];
  let line = '#';
  for (const word of words) {
    if (line !== '#' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = '#';
    }
    line += ` ${word}`;
  }
  return [...lines, line].join('\n');
}

/** A heading among the comments. */
export function rHeading(text: string): string {
  return `\n# ${'-'.repeat(94)}\n${rComment(text)}\n# ${'-'.repeat(94)}\n`;
}
