import type { PublishedFile } from './published-file.ts';
import { sha256 } from './sha256.ts';

/** What is said of a file beside it. */
export interface FileFacts {
  name: string;
  mediaType: string;
  description: string;
  bytes: number;
  /** Hexadecimal. */
  sha256: string;
}

const hashes = new WeakMap<PublishedFile, string>();

/** Size and checksum of a file; each file is hashed once. */
export function fileFacts(file: PublishedFile): FileFacts {
  const known = hashes.get(file) ?? sha256(file.bytes);
  hashes.set(file, known);
  const { name, mediaType, description, bytes } = file;
  return { name, mediaType, description, bytes: bytes.length, sha256: known };
}
