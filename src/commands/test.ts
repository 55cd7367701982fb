/** `test`: every check of Tankside itself. All of them run, whatever the first says. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ensureBrowser } from './browser.ts';
import { runTool, tools } from './tools.ts';
import { countTests, type Tally } from './vitest-tally.ts';

/** Chains that share nothing run side by side; tsc reads the types that `astro check` writes. */
const chains = [
  [tools.astroCheck, tools.typescript],
  [tools.lint, tools.format],
];

export async function run(args: string[]): Promise<number> {
  const { positionals } = parseArgs({ args, allowPositionals: true });
  const browser = ensureBrowser();
  if ('instruction' in browser) {
    process.stderr.write(`${browser.instruction}\n`);
    return 1;
  }
  const outcomes: boolean[] = [];
  if (positionals.length === 0) {
    const all = chains.map(async (chain) => {
      for (const tool of chain) outcomes.push(await report(tool));
    });
    await Promise.all(all);
  }
  const tests = await vitest(positionals, browser.path);
  const passed = tests.passed + outcomes.filter((good) => good).length;
  const failed = tests.failed + outcomes.filter((good) => !good).length;
  const skipped = tests.skipped > 0 ? `, ${tests.skipped} skipped` : '';
  process.stdout.write(`${passed} passed, ${failed} failed${skipped}\n`);
  return failed === 0 ? 0 : 1;
}

async function report(tool: (typeof tools)[keyof typeof tools]): Promise<boolean> {
  const { code, output, seconds } = await runTool(tool);
  const good = code === 0;
  process.stdout.write(`${good ? 'passed' : 'FAILED'}  ${tool.name} (${seconds.toFixed(0)} s)\n`);
  if (!good) process.stdout.write(`${output.trim()}\n`);
  return good;
}

async function vitest(words: string[], browser: string): Promise<Tally> {
  const folder = await mkdtemp(join(tmpdir(), 'tankside-tests-'));
  const file = join(folder, 'tests.json');
  const { args } = tools.vitest;
  const tool = {
    ...tools.vitest,
    args: [...args, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`, ...words],
    env: { CHROME_PATH: browser },
    streams: true,
  };
  try {
    const { code } = await runTool(tool);
    const text = await readFile(file, 'utf8').catch(() => '');
    return countTests(text, code);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
