/** Files that a reader gives to a page: chosen, or dropped on it as files or folders. */

/** A file with its path from the folder that was given, parted by `/`. */
export interface PageFile {
  path: string;
  file: File;
}

/** A folder with more is nobody's trial; looking into it further would only take time. */
const most = 20_001;

/** The files that were chosen with an input. */
export function chosenFiles(list: FileList | null): PageFile[] {
  return [...(list ?? [])].map((file) => ({ path: file.webkitRelativePath || file.name, file }));
}

/** The files that were dropped, folders looked into. */
export async function droppedFiles(transfer: DataTransfer): Promise<PageFile[]> {
  // Entries are there only while the event lasts: all are asked for before anything is waited for.
  const items = [...transfer.items].filter(({ kind }) => kind === 'file');
  const roots = items.map((item) => ({ entry: item.webkitGetAsEntry(), file: item.getAsFile() }));
  const files: PageFile[] = [];
  for (const { entry, file } of roots) {
    if (entry !== null) await lookInto(entry, files);
    else if (file !== null) files.push({ path: file.name, file });
  }
  return files;
}

async function lookInto(entry: FileSystemEntry, files: PageFile[]): Promise<void> {
  if (files.length >= most) return;
  const path = entry.fullPath.replace(/^\//, '');
  if (entry.isFile) files.push({ path, file: await fileOf(entry as FileSystemFileEntry, path) });
  else for (const inside of await entriesOf(entry as FileSystemDirectoryEntry)) await lookInto(inside, files);
}

/** A file that cannot be opened is kept as one that cannot be read, so that the check says so. */
function fileOf(entry: FileSystemFileEntry, path: string): Promise<File> {
  return new Promise((done) => {
    entry.file(done, () => done(new File([], path)));
  });
}

/** A reader gives some entries at a time, and none when it is through. */
async function entriesOf(folder: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((done) => {
      reader.readEntries(done, () => done([]));
    });
    if (some.length === 0 || all.length >= most) return all;
    all.push(...some);
  }
}
