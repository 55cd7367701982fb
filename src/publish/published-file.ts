import { say } from '../model/say.ts';

/** One file as it is published. */
export interface PublishedFile {
  /** Its name in the trial's data folder; for files across trials its path from the site's root on. */
  name: string;
  bytes: Uint8Array;
  mediaType: string;
  /** What the file is for, in plain words: English, as metadata has it. */
  description: string;
  /** That as a message and its values, where it has values; a page says it in the site's language. */
  message?: FileMessage;
}

/** A message with values in it. */
export interface FileMessage {
  text: string;
  values: Readonly<Record<string, string>>;
}

/** A description with values in it, as a file has it. */
export function describedAs(
  text: string,
  values: Readonly<Record<string, string>>,
): Required<Pick<PublishedFile, 'description' | 'message'>> {
  const description = text.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
  return { description, message: { text, values } };
}

/** What a file is for, in the site's language. */
export function saidOf({ description, message }: Pick<PublishedFile, 'description' | 'message'>): string {
  return message === undefined ? say(description) : say(message.text, message.values);
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
