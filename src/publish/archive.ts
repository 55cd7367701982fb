import { zipSync, type ZipOptions } from 'fflate';

/** What is compressed already is stored as it is. */
const packed = /\.(?:xlsx|parquet|zip|jpg|png|webp|avif)$/;

/** Local time is what a ZIP entry holds: noon of the day is made so that every time zone writes the same. */
export function noonOf(day: string): Date {
  const [year = 1980, month = 1, date = 1] = day.split('-').map(Number);
  return new Date(Math.max(year, 1980), month - 1, date, 12);
}

/**
 * A ZIP archive of one folder, its entries in the given order and all of one time, so that the same files
 * make the same bytes. A file's name may not leave the folder.
 *
 * @param day - ISO 8601; ZIP knows no day before 1980.
 */
export function archive(
  folder: string,
  day: string,
  files: readonly { name: string; bytes: Uint8Array }[],
): Uint8Array {
  const entries = files.map(({ name, bytes }): [string, [Uint8Array, ZipOptions]] => {
    if (!isInside(name)) throw new Error(`archive: the file name "${name}" leaves its folder`);
    return [`${folder}/${name}`, [bytes, { level: packed.test(name) ? 0 : 6 }]];
  });
  return zipSync(Object.fromEntries(entries), { mtime: noonOf(day), os: 3, attrs: 0o100644 << 16 });
}

/** True where every part of the path is a plain name. */
export const isInside = (name: string): boolean =>
  name.split('/').every((part) => part !== '' && part !== '.' && part !== '..') &&
  !/[\\\0]|^[A-Za-z]:/.test(name);
