/**
 * What every npm script calls. Plain JavaScript on purpose: it runs on whatever Node the machine has,
 * before anything is installed, and its work is to get to the pinned Node with the pinned packages.
 *
 *     node src/commands/launch.mjs <verb> [arguments]
 *
 * Set-up speaks on standard error only, so that a verb's standard output is the verb's own.
 */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { setUp } from './set-up.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const entry = fileURLToPath(new URL('./tankside.ts', import.meta.url));
const OLDEST = 20;

/** Runs the command line on the given Node and ends as it ends: same exit code, same signal. */
function hand(node, args) {
  // Astro would otherwise report its use to its makers.
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };
  const child = spawn(node, [entry, ...args], { stdio: 'inherit', env });
  const pass = (signal) => {
    // On a terminal Ctrl-C reaches the whole group by itself; sending it again would count as a second one.
    if (signal !== 'SIGINT' || !process.stdin.isTTY) child.kill(signal);
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, pass);
  endWithParent(() => child.kill('SIGTERM'));
  child.on('error', (error) => {
    say(`The installed Node could not be started (${error.message}). Delete node_modules and try again.`);
    process.exitCode = 1;
  });
  child.on('exit', (code, signal) => {
    if (signal === null) {
      process.exitCode = code ?? 1;
      return;
    }
    process.removeAllListeners(signal);
    process.kill(process.pid, signal);
  });
}

/**
 * Ends the work when npm is ended: npm passes a signal on to the shell that it runs a script in, and that
 * shell may die of it without a word to what it started.
 */
function endWithParent(end) {
  if (process.env.npm_lifecycle_event === undefined) return;
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) end();
  }, 500).unref();
}

function say(text) {
  process.stderr.write(`${text}\n`);
}

if (Number(process.versions.node.split('.')[0]) < OLDEST) {
  say(
    `Tankside needs Node.js ${OLDEST} or newer; this is ${process.version}. Install a newer one and try again.`,
  );
  process.exitCode = 1;
} else {
  const ready = await setUp(root, say).catch((error) => {
    if (process.env.TANKSIDE_DEBUG === '1') throw error;
    return { problem: `Setting up failed: ${error.message}` };
  });
  if (ready.problem !== undefined) {
    say(ready.problem);
    process.exitCode = 1;
  } else {
    hand(ready.node, process.argv.slice(2));
  }
}
