/**
 * Prints the raw material of the invented demo: `node test/generated/demo/generate.ts [folder]`.
 * With a folder it writes there instead. It never writes into content/: the demo was finished by hand after
 * this, and drawing it again would lose that.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { trials } from './trials.ts';

const text = (rows: string[][]): string => rows.map((row) => `${row.join(',')}\n`).join('');

const folder = process.argv[2];
const content = resolve(import.meta.dirname, '../../../content');
if (folder !== undefined && `${resolve(folder)}/`.startsWith(`${content}/`)) {
  console.error(`${folder} lies in the finished content; give another folder.`);
  process.exit(2);
}
for (const [id, draw] of Object.entries(trials)) {
  for (const [name, rows] of Object.entries(draw()) as [string, string[][]][]) {
    if (folder === undefined) {
      console.log(`# ${id}/${name}.csv\n${text(rows)}`);
      continue;
    }
    mkdirSync(join(folder, id), { recursive: true });
    writeFileSync(join(folder, id, `${name}.csv`), text(rows));
  }
}
