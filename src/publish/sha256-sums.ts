import { fileFacts } from './file-facts.ts';
import type { PublishedFile } from './published-file.ts';

/** SHA256SUMS: a line for each file, as `sha256sum --check` reads it. */
export const sha256Sums = (files: readonly PublishedFile[]): string =>
  files.map((file) => `${fileFacts(file).sha256}  ${file.name}\n`).join('');
