/** A folder with the given files, for one test; removed after it. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** Writes `{path: content}` into a new folder and answers with the folder. */
export async function temporaryFolder(files: Record<string, string> = {}): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-test-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), content);
  }
  return folder;
}
