import { decodeUtf8 } from '../read/utf8.ts';

/** No file of ours nests its values any deeper, and a program that follows them could run out of stack. */
const deepest = 40;

/** The value of a JSON file from a stranger; undefined where it is none, or nested beyond all measure. */
export function jsonValue(bytes: Uint8Array): unknown {
  const { text } = decodeUtf8(bytes);
  if (text === null || isDeep(text)) return undefined;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/** Whether brackets outside of strings nest too deep. */
function isDeep(text: string): boolean {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at]!;
    if (quoted && character === '\\') at += 1;
    else if (character === '"') quoted = !quoted;
    else if (quoted) continue;
    else if (character === '{' || character === '[') depth += 1;
    else if (character === '}' || character === ']') depth -= 1;
    if (depth > deepest) return true;
  }
  return false;
}

/** The value as an object of any keys, or null. */
export function asObject(value: unknown): Readonly<Record<string, unknown>> | null {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : null;
}

/** The value as a text of 1 to 2000 characters, or null. */
export function asText(value: unknown): string | null {
  return typeof value === 'string' && value !== '' && value.length <= 2000 ? value : null;
}

/** The value as an address on the web, or null: never one that runs something. */
export function asWebAddress(value: unknown, base?: string): string | null {
  const address = URL.parse(asText(value) ?? '', base);
  const isWeb = address !== null && /^https?:$/.test(address.protocol);
  return isWeb && address.username === '' && address.password === '' ? address.href : null;
}
