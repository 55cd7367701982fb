/**
 * The header of a CSV file as given: the names of its columns, read from the first line alone. Quoted names
 * may hold the delimiter and doubled quotes; a byte order mark and blank lines before it are passed over.
 */
export function csvHeader(bytes: Uint8Array, delimiter: string): string[] {
  const text = new TextDecoder('utf-8').decode(bytes.subarray(0, 65_536)).replace(/^(?:[ \t]*\r?\n)+/, '');
  const names: string[] = [];
  let name = '';
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text.charAt(at);
    if (character === '"') {
      if (quoted && text.charAt(at + 1) === '"') {
        name += '"';
        at += 1;
      } else quoted = !quoted;
    } else if (!quoted && character === delimiter) {
      names.push(name.trim());
      name = '';
    } else if (!quoted && (character === '\n' || character === '\r')) break;
    else name += character;
  }
  return [...names, name.trim()];
}
