/** The baseline of the build: the least that Astro can be asked to do for as many pages. */
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { root } from '../../src/commands/folders.ts';

/** Writes an Astro project of `count` pages with a table of 100 rows each, and nothing else. */
export async function writeBareSite(folder: string, count: number): Promise<void> {
  const pages = join(folder, 'src', 'pages', 'trials');
  await mkdir(pages, { recursive: true });
  await symlink(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  await writeFile(join(folder, 'package.json'), '{ "name": "bare", "type": "module" }\n');
  await writeFile(join(folder, 'astro.config.mjs'), 'export default {};\n');
  await writeFile(join(pages, '[id].astro'), page(count));
}

const page = (count: number) => `---
export function getStaticPaths() {
  return Array.from({ length: ${count} }, (_, i) => ({
    params: { id: 'generated-' + String(i + 1).padStart(4, '0') },
    props: { seed: i },
  }));
}
const { id } = Astro.params;
const { seed } = Astro.props;
const rows = Array.from({ length: 100 }, (_, i) => ({
  container: 'T' + (1 + Math.floor(i / 25)),
  row: 1 + (Math.floor(i / 5) % 5),
  column: 1 + (i % 5),
  weight: 100 + ((seed * 31 + i * 17) % 97),
}));
---
<!doctype html>
<html lang="en">
  <head><meta charset="utf-8" /><title>{id}</title></head>
  <body>
    <h1>{id}</h1>
    <table>
      <thead><tr><th>container</th><th>row</th><th>column</th><th>fresh weight, g</th></tr></thead>
      <tbody>
        {rows.map((row) => (
          <tr><td>{row.container}</td><td>{row.row}</td><td>{row.column}</td><td>{row.weight}</td></tr>
        ))}
      </tbody>
    </table>
  </body>
</html>
`;
