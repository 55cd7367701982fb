import { Inflate } from 'fflate';
import { crc32 } from './crc32.ts';
import { largestFile, type UnreadReason } from './folder-files.ts';
import { zipEntries, type ZipEntry } from './zip-entries.ts';

/** Why nothing of an archive was read. */
export type ArchiveFault = 'no zip' | 'too large' | 'too many files';

/** A file's bytes, or why it was not read. */
export type Taken = Uint8Array | UnreadReason;

/** Files by path with `/`. */
export type TakenFiles = Map<string, Taken>;

/** What one trial, or a site's content, can have and still be checked in a page: 500 MB and 20 000 files. */
export const most = { bytes: 500 * 1024 * 1024, files: 20_000 };

const localMark = 0x04034b50;
const localLength = 30;
const longestPath = 500;

/**
 * Unpacks a zip archive in memory. Nothing that the archive says of itself is believed: what is unpacked is held
 * against the size it was said to have and against its checksum, so that an archive made to burst (a "zip bomb") is
 * let go of before it does; a path that climbs out of the archive is not followed, nor is a link.
 */
export function unzip(bytes: Uint8Array, limits = most): TakenFiles | ArchiveFault {
  const entries = zipEntries(bytes);
  if (entries === null) return 'no zip';
  if (entries.length > limits.files) return 'too many files';
  const whole = entries.reduce((sum, { size }) => sum + Math.min(size, largestFile), 0);
  if (whole > limits.bytes) return 'too large';
  const files: TakenFiles = new Map();
  for (const entry of entries) {
    const { path } = entry;
    if ((path.endsWith('/') && entry.size === 0) || isHidden(path)) continue;
    const known = files.has(path);
    files.set(path, known ? 'in the archive twice' : unpacked(bytes, entry));
  }
  return files;
}

function unpacked(bytes: Uint8Array, entry: ZipEntry): Taken {
  if (isOutside(entry.path)) return 'outside the archive';
  if (entry.isLink) return 'a link';
  if (entry.isLocked) return 'locked with a password';
  if (entry.method !== 0 && entry.method !== 8) return 'packed in a rare way';
  // Sizes beyond 4 GB stand elsewhere, and here the largest number there is.
  if (entry.size > largestFile) return 'too large';
  const packed = packedBytes(bytes, entry);
  if (packed === null) return 'damaged';
  const content = entry.method === 0 ? packed : inflated(packed, entry.size);
  if (content === null) return 'damaged';
  return content.length === entry.size && crc32(content) === entry.crc32 ? content : 'damaged';
}

/** True for what a computer adds unasked: names that begin with a dot, and the Mac's folder of such. */
export function isHidden(path: string): boolean {
  return path.split('/').some((step) => step === '__MACOSX' || /^\.[^.]/.test(step));
}

/** True for a path that would lead out of the folder it is unpacked into, or is no path at all. */
export function isOutside(path: string): boolean {
  const steps = path.split('/');
  return (
    path.length > longestPath ||
    /^[A-Za-z]:|\0/.test(path) ||
    steps.some((step) => step === '' || step === '.' || step === '..')
  );
}

function packedBytes(bytes: Uint8Array, { at, packed }: ZipEntry): Uint8Array | null {
  if (at + localLength > bytes.length) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(at, true) !== localMark) return null;
  const start = at + localLength + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  return start + packed > bytes.length ? null : bytes.subarray(start, start + packed);
}

/** So little is unpacked in one go that even what swells a thousandfold stays small. */
const step = 16 * 1024;

/** Unpacks a deflated file of a known size; null where it is damaged or has another. */
function inflated(packed: Uint8Array, size: number): Uint8Array | null {
  const content = new Uint8Array(size);
  let length = 0;
  const inflate = new Inflate((piece) => {
    if (length + piece.length <= size) content.set(piece, length);
    length += piece.length;
  });
  try {
    for (let at = 0; at < packed.length && length <= size; at += step) {
      inflate.push(packed.subarray(at, at + step), at + step >= packed.length);
    }
  } catch {
    return null;
  }
  return length === size ? content : null;
}
