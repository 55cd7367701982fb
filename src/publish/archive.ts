import { zipFile } from './zip-file.ts';

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
  const outside = files.find(({ name }) => !isInside(name));
  if (outside) throw new Error(`archive: the file name "${outside.name}" leaves its folder`);
  return zipFile(
    files.map(({ name, bytes }) => ({ name: `${folder}/${name}`, bytes })),
    day,
  );
}

/** True where every part of the path is a plain name. */
export const isInside = (name: string): boolean =>
  name.split('/').every((part) => part !== '' && part !== '.' && part !== '..') &&
  !/[\\\0]|^[A-Za-z]:/.test(name);
