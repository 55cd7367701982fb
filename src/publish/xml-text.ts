const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Everything that XML 1.0 allows no document to hold, even escaped. */
const forbidden = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

/** Text for an element or a double-quoted attribute of XML 1.0. */
export const xmlText = (text: string): string =>
  text.replace(forbidden, '\uFFFD').replace(/[&<>"]/g, (character) => entities[character] ?? character);
