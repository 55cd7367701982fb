/** What the directory at the end of a zip archive says of one file (APPNOTE.TXT 6.3.10, section 4.3.12). */
export interface ZipEntry {
  /** As written, with `/`; a folder's ends with one. */
  path: string;
  isLocked: boolean;
  isLink: boolean;
  /** 0 stored, 8 deflated. */
  method: number;
  crc32: number;
  /** In bytes, in the archive and unpacked. */
  packed: number;
  size: number;
  /** Where its own header begins in the archive. */
  at: number;
}

const endMark = 0x06054b50;
const entryMark = 0x02014b50;
const endLength = 22;
const entryLength = 46;
/** The longest remark that may stand behind the end. */
const longestRemark = 0xffff;

/**
 * The files that a zip archive's directory lists; null where there is no whole directory. The directory alone is
 * believed, as by every unpacker, and each file is held against it when it is unpacked.
 */
export function zipEntries(bytes: Uint8Array): ZipEntry[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOf(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  for (let index = 0; index < count; index += 1) {
    if (at + entryLength > end || view.getUint32(at, true) !== entryMark) return null;
    const nameLength = view.getUint16(at + 28, true);
    const next =
      at + entryLength + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) return null;
    entries.push(entryAt(bytes, view, at, nameLength));
    at = next;
  }
  return entries;
}

function endOf(view: DataView): number | null {
  const last = view.byteLength - endLength;
  for (let at = last; at >= Math.max(0, last - longestRemark); at -= 1) {
    if (
      view.getUint32(at, true) === endMark &&
      at + endLength + view.getUint16(at + 20, true) === view.byteLength
    )
      return at;
  }
  return null;
}

function entryAt(bytes: Uint8Array, view: DataView, at: number, nameLength: number): ZipEntry {
  const madeBy = view.getUint8(at + 5);
  const mode = view.getUint16(at + 40, true);
  const isUnix = madeBy === 3 || madeBy === 19;
  return {
    // Some archives of Windows have backslashes, which no portable name has.
    path: nameOf(bytes.subarray(at + entryLength, at + entryLength + nameLength)).replaceAll('\\', '/'),
    isLocked: (view.getUint16(at + 8, true) & 1) === 1,
    isLink: isUnix && (mode & 0o170000) === 0o120000,
    method: view.getUint16(at + 10, true),
    crc32: view.getUint32(at + 16, true),
    packed: view.getUint32(at + 20, true),
    size: view.getUint32(at + 24, true),
    at: view.getUint32(at + 42, true),
  };
}

/** UTF-8, or else byte by byte: old archives have the code page of the computer that made them. */
function nameOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1').decode(bytes);
  }
}
