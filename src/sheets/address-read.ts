/** Part of an address as a browser reads it; as it is typed where its percent signs mean nothing. */
export function addressRead(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
