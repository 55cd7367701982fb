/**
 * Makes sure that the packages of package-lock.json and the pinned Node are installed.
 *
 * Of all packages only `node` may run an install script (it fetches the Node binary for this machine).
 * npm 11 could be told so in package.json, npm 10 could not, so here both install without any script
 * and the one script is then run by itself.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { withLock } from './lock.mjs';
import { installPackages, installNode } from './set-up-npm.mjs';

/** The first Node that strips types by itself and that every pinned package accepts. */
const SUFFICES = [22, 18];

/** Signs in a path that Vite takes for its own: of an address, of a pattern, or the end of a text. */
const UNFIT = sep === '/' ? /[#?*"\\]/ : /[#?*"]/;

/**
 * @param {string} root the program's folder
 * @param {(text: string) => void} say
 * @returns {Promise<{node: string, problem?: undefined} | {problem: string}>} the Node to run on
 */
export async function setUp(root, say) {
  const [unfit] = UNFIT.exec(root) ?? [];
  if (unfit !== undefined) {
    const problem = `Tankside lies in ${root}, and the programs that it builds with cannot work below a folder with ${unfit} in its name. Rename that folder, or move Tankside elsewhere.`;
    return { problem };
  }
  const lockHash = hashOf(join(root, 'package-lock.json'));
  const quick = readyNode(root, lockHash);
  if (quick !== undefined) return { node: quick };
  const onWait = () => say('Waiting for another Tankside command that is setting up ...');
  return withLock(join(root, '.tankside', 'set-up.lock'), onWait, async () => {
    // Another process may have finished the work while this one waited.
    const done = readyNode(root, lockHash);
    return done === undefined ? install(root, lockHash, say) : { node: done };
  });
}

async function install(root, lockHash, say) {
  const started = Date.now();
  if (!isInstalled(root)) {
    say('Installing packages (once; about a minute) ...');
    const problem = await installPackages(root, say);
    if (problem !== undefined) return { problem };
  }
  let node = pinnedNode(root);
  if (!runs(node, root) || !isLinked(root)) {
    say('Fetching the pinned Node.js ...');
    const problem = await installNode(root, say);
    if (!runs(node, root)) {
      if (!newEnough()) return { problem: problem ?? noNode() };
      say(`The pinned Node.js does not run on this machine; going on with this one (${process.version}).`);
      node = process.execPath;
    }
  }
  const other = node === pinnedNode(root) ? undefined : node;
  writeFileSync(stampFile(root), `${JSON.stringify({ lock: lockHash, other })}\n`);
  say(`Set up in ${((Date.now() - started) / 1000).toFixed(0)} s.`);
  return { node };
}

const stampFile = (root) => join(root, 'node_modules', '.tankside-set-up.json');
const hashOf = (file) => createHash('sha256').update(readFileSync(file)).digest('hex');

/** The Node noted by the last set-up, where nothing has changed since. */
function readyNode(root, lockHash) {
  try {
    const stamp = JSON.parse(readFileSync(stampFile(root), 'utf8'));
    const node = stamp.other ?? pinnedNode(root);
    if (stamp.lock === lockHash && existsSync(node)) return node;
  } catch {
    // No stamp, or an unreadable one: set up again.
  }
  return undefined;
}

/**
 * Whether node_modules already holds what package-lock.json asks for, by npm's own record of what it
 * installed: so that a plain `npm install` by a developer is not done over.
 */
function isInstalled(root) {
  try {
    const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
    const record = join(root, 'node_modules', '.package-lock.json');
    const installed = JSON.parse(readFileSync(record, 'utf8')).packages;
    return Object.entries(wanted).every(([path, entry]) => {
      if (path === '' || entry.optional || entry.devOptional || entry.peer) return true;
      return installed[path]?.version === entry.version && existsSync(join(root, path, 'package.json'));
    });
  } catch {
    return false;
  }
}

function pinnedNode(root) {
  return join(root, 'node_modules', 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node');
}

function isLinked(root) {
  const link = join(root, 'node_modules', '.bin', process.platform === 'win32' ? 'node.cmd' : 'node');
  return existsSync(link);
}

function runs(node, root) {
  const wanted = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).devDependencies.node;
  const answer = spawnSync(node, ['--version'], { encoding: 'utf8', timeout: 20_000 });
  return answer.status === 0 && answer.stdout.trim() === `v${wanted}`;
}

function newEnough() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  return major > SUFFICES[0] || (major === SUFFICES[0] && minor >= SUFFICES[1]);
}

function noNode() {
  const machine = `${process.platform} ${process.arch}`;
  return `There is no ready-made Node.js of the pinned version for this machine (${machine}). Install Node.js ${SUFFICES.join('.')} or newer and try again.`;
}
