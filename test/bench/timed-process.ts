import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';

/** Seconds that a process of Node takes from its start to its end; rejects where it ends with a fault. */
export function timedProcess(args: string[], cwd: string, env: Record<string, string>): Promise<number> {
  const started = performance.now();
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, args, {
      cwd,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (piece: string) => (output += piece));
    }
    child.on('error', fail);
    child.on('close', (code) => {
      if (code === 0) done((performance.now() - started) / 1000);
      else fail(new Error(`a build to be measured ended with ${code}: ${output.trim().split('\n').at(-1)}`));
    });
  });
}
