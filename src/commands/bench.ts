/** `bench`: measures against baselines, in the same run and on the same machine. */
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import type { Bench, BenchRow } from '../../test/bench/bench.ts';
import { root } from './folders.ts';
import { wrongUse } from './usage.ts';

export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { quick: { type: 'boolean', default: false } },
  });
  const benches = await found(positionals);
  if (benches.length === 0) throw wrongUse(`No bench has a name with "${positionals.join('" or "')}" in it.`);
  const misses: string[] = [];
  for (const bench of benches) {
    process.stdout.write(`\n${bench.name}\n`);
    const result = await bench.run({ quick: values.quick });
    process.stdout.write(table(result.rows));
    misses.push(...(result.misses ?? []));
  }
  for (const miss of misses) process.stdout.write(`Missed: ${miss}\n`);
  return misses.length === 0 ? 0 : 1;
}

/** Every file of test/bench/ that exports a `bench`, in the order of their names. */
async function found(words: string[]): Promise<Bench[]> {
  const folder = join(root, 'test', 'bench');
  const files = (await readdir(folder)).filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts'));
  const benches: Bench[] = [];
  for (const file of files.sort()) {
    if (words.length > 0 && !words.some((word) => file.includes(word))) continue;
    const module = (await import(pathToFileURL(join(folder, file)).href)) as { bench?: Bench };
    if (module.bench !== undefined) benches.push(module.bench);
  }
  return benches;
}

/** Rows as a plain table: the names on top, numbers to the right. */
function table(rows: readonly BenchRow[]): string {
  const names = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cells = rows.map((row) => names.map((name) => shown(row[name])));
  const widths = names.map((name, i) => Math.max(name.length, ...cells.map((line) => line[i]?.length ?? 0)));
  const lines = [names, ...cells].map((line, at) => {
    const padded = line.map((text, i) => {
      const width = widths[i] ?? 0;
      const right = at === 0 ? typeof rows[0]?.[names[i] ?? ''] === 'number' : /^-?[\d.]/.test(text);
      return right ? text.padStart(width) : text.padEnd(width);
    });
    return `  ${padded.join('  ').trimEnd()}\n`;
  });
  return lines.join('');
}

function shown(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'string' || Number.isInteger(value)) return String(value);
  return Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3);
}
