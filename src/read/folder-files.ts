/** Why a file was not read. All but the first six befall only what comes out of a zip archive. */
export type UnreadReason =
  | 'a link that leaves the folder'
  | 'not a regular file'
  | 'not readable'
  | 'too large'
  | 'not a folder'
  | 'not in the folder of a trial'
  | 'a link'
  | 'outside the archive'
  | 'in the archive twice'
  | 'locked with a password'
  | 'packed in a rare way'
  | 'damaged';

/** Something in a folder that was not read, and why. */
export interface Unread {
  /** From the trial's folder on, with `/`. */
  path: string;
  reason: UnreadReason;
}

/** A trial folder's files by path, and what in it was not read (absent where all was). */
export type FolderFiles = ReadonlyMap<string, Uint8Array> & { readonly unread?: readonly Unread[] };

/** Beyond this a file is no part of a trial's record: 100 MB. */
export const largestFile = 100 * 1024 * 1024;
