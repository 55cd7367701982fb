import { crc32, deflateRawSync } from 'node:zlib';
import { Zip, type ZipInputFile } from 'fflate';

/** What is compressed already is stored as it is. */
const packed = /\.(?:xlsx|parquet|zip|jpg|png|webp|avif)$/;

/** Local time is what a ZIP entry holds: noon of the day is made so that every time zone writes the same. */
function noonOf(day: string): Date {
  const [year = 1980, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(Math.max(year, 1980), month - 1, date, 12);
}

/**
 * A ZIP file of some entries, in their order and all of one time, so that the same entries make the same bytes.
 *
 * @param day - ISO 8601; ZIP knows no day before 1980.
 */
export function zipFile(entries: readonly { name: string; bytes: Uint8Array }[], day: string): Uint8Array {
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    chunks.push(chunk);
  });
  for (const { name, bytes } of entries) addEntry(zip, name, bytes, noonOf(day));
  zip.end();
  return joined(chunks);
}

/** An entry of known size, deflated by Node itself: many times as fast as in JavaScript. */
function addEntry(zip: Zip, filename: string, bytes: Uint8Array, mtime: Date): void {
  const stored = packed.test(filename);
  const entry: ZipInputFile = {
    filename,
    size: bytes.length,
    crc: crc32(bytes),
    compression: stored ? 0 : 8,
    mtime,
    os: 3,
    attrs: 0o100644 << 16,
  };
  zip.add(entry);
  entry.ondata!(null, new Uint8Array(stored ? bytes : deflateRawSync(bytes, { level: 6 })), true);
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}
