import type { FileMessage, PublishedFile } from './published-file.ts';
import { sha256 } from './sha256.ts';

/** What is said of a file beside it. */
export interface FileFacts {
  name: string;
  mediaType: string;
  description: string;
  /** The description as a message, where it has values: for pages, which say it in their language. */
  message?: FileMessage;
  bytes: number;
  /** Hexadecimal. */
  sha256: string;
}

const hashes = new WeakMap<PublishedFile, string>();

/** Size and checksum of a file; each file is hashed once. */
export function fileFacts(file: PublishedFile): FileFacts {
  const known = hashes.get(file) ?? sha256(file.bytes);
  hashes.set(file, known);
  const { name, mediaType, description, message, bytes } = file;
  const said = message === undefined ? {} : { message };
  return { name, mediaType, description, ...said, bytes: bytes.length, sha256: known };
}
