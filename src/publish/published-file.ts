/** One file as it is published. */
export interface PublishedFile {
  /** Its name in the trial's data folder; for files across trials its path from the site's root on. */
  name: string;
  bytes: Uint8Array;
  mediaType: string;
  /** What the file is for, in plain words. */
  description: string;
}

const encoder = new TextEncoder();

/** A file of UTF-8 text without a byte order mark. */
export function textFile(name: string, mediaType: string, description: string, text: string): PublishedFile {
  return { name, bytes: encoder.encode(text), mediaType, description };
}

/** A file of JSON, indented so that a person can read it, with a line end after it. */
export function jsonFile(
  name: string,
  mediaType: string,
  description: string,
  value: unknown,
): PublishedFile {
  return textFile(name, mediaType, description, `${JSON.stringify(value, null, 2)}\n`);
}
