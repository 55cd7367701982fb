/**
 * What is asked of npm, and its failures in words. Nothing npm says reaches standard output.
 */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';

const OFFLINE =
  /\b(ENOTFOUND|EAI_AGAIN|ETIMEDOUT|ECONNREFUSED|ECONNRESET|ENETUNREACH|EHOSTUNREACH|ENOTCACHED)\b/;
const NOT_ALLOWED = /\b(EACCES|EPERM|EROFS)\b/;
const NO_SPACE = /\bENOSPC\b/;
const NO_NPM =
  'npm was not found. It comes with Node.js: install Node.js from its own installer or package, and try again.';

/**
 * Installs what package-lock.json pins, without running any install script.
 * @param {string} root the program's folder
 * @param {(text: string) => void} say
 * @returns {Promise<string | undefined>} what went wrong, in words for the person at the keyboard
 */
export function installPackages(root, say) {
  return npm(root, say, ['ci', '--ignore-scripts', '--include=dev', '--no-audit', '--no-fund']);
}

/**
 * Runs the install script of the package `node`, and of no other, then has npm link it into
 * node_modules/.bin (which it could not while the binary was not there yet).
 * @param {string} root the program's folder
 * @param {(text: string) => void} say
 * @returns {Promise<string | undefined>} what went wrong
 */
export async function installNode(root, say) {
  const folder = join(root, 'node_modules', 'node');
  // The script calls npm, found in the PATH.
  const problem = await run(nodeOfNpm(), [join(folder, 'installArchSpecificPackage.js')], folder, root, say);
  return problem ?? npm(root, say, ['rebuild', 'node', '--ignore-scripts']);
}

function npm(root, say, args) {
  const script = process.env.npm_execpath;
  if (script !== undefined && /npm-cli\.[cm]?js$/.test(script) && existsSync(script)) {
    return run(nodeOfNpm(), [script, ...args], root, root, say);
  }
  const windows = process.platform === 'win32';
  return run(windows ? 'npm.cmd' : 'npm', args, root, root, say, { shell: windows });
}

/** The Node that npm itself runs on: the present one may lie in the node_modules about to be replaced. */
function nodeOfNpm() {
  const outer = process.env.npm_node_execpath;
  return outer !== undefined && existsSync(outer) ? outer : process.execPath;
}

function run(command, args, cwd, root, say, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env: environment(root),
      stdio: ['ignore', 'pipe', 'pipe'],
      ...options,
    });
    let said = '';
    const hear = (piece) => (said += piece);
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', (error) => resolve(error.code === 'ENOENT' ? NO_NPM : error.message));
    child.on('close', (code) => {
      if (code === 0) return resolve(undefined);
      if (process.env.TANKSIDE_DEBUG === '1') say(said);
      resolve(explain(said));
    });
  });
}

function explain(said) {
  const again = 'and try again (TANKSIDE_DEBUG=1 shows all that npm said).';
  if (OFFLINE.test(said)) {
    return `The packages could not be fetched: the package registry cannot be reached. Connect this machine to the internet ${again}`;
  }
  if (NOT_ALLOWED.test(said)) {
    return `The packages could not be written: this folder may not be written to. Copy Tankside to a folder of your own ${again}`;
  }
  if (NO_SPACE.test(said)) return `The packages could not be written: the disk is full. Make room ${again}`;
  const line =
    said.split('\n').find((text) => /npm err(or|!) (?!code)/i.test(text)) ?? said.trim().split('\n').at(-1);
  return `The packages could not be installed: ${line ?? 'npm gave no reason'}. Mend that ${again}`;
}

/**
 * The environment for npm: quiet but for errors, whatever the outer npm was told, and without this
 * project's .bin in the PATH, where a half-installed `node` could be found before the machine's own.
 */
function environment(root) {
  const env = {
    // So that a machine without a connection is told so in half a minute.
    npm_config_fetch_retry_mintimeout: '3000',
    npm_config_fetch_retry_maxtimeout: '10000',
    ...process.env,
    npm_config_loglevel: 'error',
    npm_config_progress: 'false',
  };
  const key = Object.keys(env).find((name) => name.toUpperCase() === 'PATH') ?? 'PATH';
  const bin = join(root, 'node_modules', '.bin');
  const path = (env[key] ?? '').split(delimiter).filter((folder) => folder !== bin);
  env[key] = [dirname(nodeOfNpm()), ...path].join(delimiter);
  delete env.npm_config_local_prefix;
  delete env.NODE_ENV;
  return env;
}
