/** The installed tools that the checks of Tankside itself run, each on the pinned Node. */
import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { join } from 'node:path';
import { root } from './folders.ts';

export interface Tool {
  name: string;
  /** The script inside node_modules. */
  script: string;
  args: string[];
  env?: Record<string, string>;
  /** Whether its output goes to the terminal as it comes, rather than being kept. */
  streams?: boolean;
}

export interface Outcome {
  code: number;
  /** Both streams, in the order they came; empty where they were streamed. */
  output: string;
  seconds: number;
}

export const tools = {
  astroCheck: {
    name: 'types of the pages',
    script: 'astro/bin/astro.mjs',
    args: ['check', '--minimumFailingSeverity', 'warning'],
  },
  typescript: {
    name: 'types',
    script: 'typescript/bin/tsc',
    args: ['--noEmit', '-p', 'tsconfig.json'],
  },
  lint: {
    name: 'lint',
    script: 'eslint/bin/eslint.js',
    args: ['-c', 'test/lint/eslint.config.js', '--max-warnings', '0', 'src', 'test', 'astro.config.mjs'],
  },
  format: { name: 'format', script: 'prettier/bin/prettier.cjs', args: ['--check', '.'] },
  vitest: {
    name: 'tests',
    script: 'vitest/vitest.mjs',
    args: ['run', '--config', 'test/vitest.config.ts'],
  },
} satisfies Record<string, Tool>;

/** Runs a tool to its end. */
export function runTool(tool: Tool): Promise<Outcome> {
  const started = performance.now();
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, [join(root, 'node_modules', tool.script), ...tool.args], {
      cwd: root,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...tool.env },
      stdio: tool.streams ? ['ignore', 'inherit', 'inherit'] : ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream?.setEncoding('utf8').on('data', (piece: string) => (output += piece));
    }
    child.on('error', fail);
    child.on('close', (code) => {
      done({ code: code ?? 1, output, seconds: (performance.now() - started) / 1000 });
    });
  });
}
