import { largestFile } from './folder-files.ts';
import { isHidden, isOutside, most, unzip, type ArchiveFault, type TakenFiles } from './unzip.ts';

/** A file that was given to a page: a `File` of the browser with its path from the folder that was given. */
export interface GivenFile {
  /** With `/`; a file's name alone where files were chosen one by one. */
  path: string;
  /** Bytes. */
  size: number;
  arrayBuffer(): Promise<ArrayBuffer>;
}

/** What was given, in memory. */
export interface TakenIn {
  files: TakenFiles;
  /** Archives of which nothing was read, and what was given too much of. */
  refused: readonly { name: string; fault: ArchiveFault }[];
}

/** Reads files that were given to a page; a zip among them is taken for the folder that it holds. */
export async function takeIn(given: readonly GivenFile[]): Promise<TakenIn> {
  const shown = given.filter(({ path }) => !isHidden(path));
  const refused: { name: string; fault: ArchiveFault }[] = [];
  const files: TakenFiles = new Map();
  const tooMuch = whatIsTooMuch(shown);
  if (tooMuch !== null) return { files, refused: [{ name: '', fault: tooMuch }] };
  for (const file of shown) {
    const content = file.size > largestFile ? 'too large' : await bytesOf(file);
    if (!isArchive(file.path) || typeof content === 'string') {
      files.set(file.path, content);
      continue;
    }
    const inside = unzip(content);
    if (typeof inside === 'string') refused.push({ name: file.path, fault: inside });
    else addArchive(files, file.path, inside);
  }
  return { files, refused };
}

function whatIsTooMuch(given: readonly GivenFile[]): ArchiveFault | null {
  if (given.length > most.files) return 'too many files';
  const bytes = given.reduce((sum, { size }) => sum + Math.min(size, largestFile), 0);
  return bytes > most.bytes ? 'too large' : null;
}

/** A zip that was given itself; one inside a folder is one of the folder's files. */
function isArchive(path: string): boolean {
  return !path.includes('/') && /\.zip$/i.test(path);
}

/** A file may have been moved or locked since it was chosen. */
async function bytesOf(file: GivenFile): Promise<Uint8Array | 'not readable'> {
  return file.arrayBuffer().then(
    (buffer) => new Uint8Array(buffer),
    () => 'not readable',
  );
}

/** An archive of one folder is that folder; of loose files, a folder named as the archive. */
function addArchive(files: TakenFiles, name: string, inside: TakenFiles): void {
  const paths = [...inside.keys()].filter((path) => !isOutside(path));
  const tops = new Set(paths.map((path) => path.split('/')[0]!));
  const isFolder = tops.size === 1 && paths.every((path) => path.includes('/'));
  // Browsers number what is downloaded twice: "autumn (1).zip".
  const folder = name.replace(/\.zip$/i, '').replace(/ ?\(\d+\)$/, '');
  for (const [path, content] of inside)
    files.set(isFolder || isOutside(path) ? path : `${folder}/${path}`, content);
}
