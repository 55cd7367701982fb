/** Something in a folder that was not read, and why. */
export interface Unread {
  /** From the trial's folder on, with `/`. */
  path: string;
  reason: 'a link that leaves the folder' | 'not a regular file' | 'not readable' | 'too large';
}

/** A trial folder's files by path, and what in it was not read (absent where all was). */
export type FolderFiles = ReadonlyMap<string, Uint8Array> & { readonly unread?: readonly Unread[] };
