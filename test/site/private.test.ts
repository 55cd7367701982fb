import { cp, readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { sha256 } from '../../src/publish/sha256.ts';
import { builtSite, demo } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const address = 'nobody-may-see@private.example.org';
const bytes = new TextEncoder().encode(address);

/** Every file below a folder. */
async function filesOf(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
}

/** A file and whatever is packed in it. */
function unpacked(name: string, content: Uint8Array): (readonly [string, Uint8Array])[] {
  if (!/\.(?:zip|xlsx)$/.test(name)) return [[name, content]];
  const inner = Object.entries(unzipSync(content));
  return [[name, content] as const, ...inner.flatMap(([path, each]) => unpacked(`${name}/${path}`, each))];
}

test('a site holds no e-mail that is not public and no photograph as it came, in no file or archive of it', async () => {
  const content = await temporaryFolder();
  await cp(demo, content, { recursive: true });
  const given = await filesOf(content);
  const metadata = given.filter((path) => path.endsWith('trial.yaml'));
  let changed = 0;
  for (const path of metadata) {
    const text = await readFile(path, 'utf8');
    // What is frozen stays as its sums say.
    if (path.includes('versions')) continue;
    const withAddress = text.replace(/\bpart: (grower|author|recorder)/g, `part: $1, email: ${address}`);
    if (withAddress !== text) changed += 1;
    await writeFile(path, `${withAddress}\n# ${address}\n`);
    await writeFile(join(path, '..', 'notes.txt'), bytes);
  }
  expect(changed).toBeGreaterThan(3);
  const photographs = given.filter((path) => /\.(?:jpe?g|png|webp)$/.test(path));
  const originals = new Set(await Promise.all(photographs.map(async (path) => sha256(await readFile(path)))));
  expect(originals.size).toBeGreaterThan(0);
  const { dist } = await builtSite(content);
  const files = await filesOf(dist);
  expect(files.length).toBeGreaterThan(100);
  for (const path of files) {
    for (const [name, each] of unpacked(path.slice(dist.length + 1), await readFile(path))) {
      expect(Buffer.from(each).includes(Buffer.from(bytes)), `${name} holds the address`).toBe(false);
      expect(originals.has(sha256(each)), `${name} is a photograph as it came`).toBe(false);
    }
  }
}, 120_000);
