/** Builds sites for the tests, by the command that everyone uses, each content only once in a run. */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { cp, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { inject } from 'vitest';
import { root } from '../../src/commands/folders.ts';
import { withLock } from '../../src/commands/lock.mjs';

export interface BuiltSite {
  /** The folder of the built pages. */
  dist: string;
  /** What the build printed. */
  output: string;
}

export interface SiteOptions {
  /** A site.yaml `url` to build for instead of the content's own. */
  url?: string;
  /** Any word: a build of its own, not shared with other tests that have the same content. */
  copy?: string;
  /** Variables that the build is given beside those of every build. */
  env?: Record<string, string>;
}

/** The demo's content folder. */
export const demo = join(root, 'content');

/** Builds a content folder, or answers with the build that another test of this run has made of it. */
export async function builtSite(content: string = demo, options: SiteOptions = {}): Promise<BuiltSite> {
  const { url, copy = '', env = {} } = options;
  const key = createHash('sha256')
    .update(`${await hashOfFolder(content)} ${url} ${copy} ${JSON.stringify(env)}`)
    .digest('hex');
  const folder = join(inject('runFolder'), key.slice(0, 16));
  const done = join(folder, 'output.txt');
  const dist = join(folder, 'dist');
  // One build at a time: two would share Astro's cache folders, and the machine.
  await withLock(
    join(inject('runFolder'), 'build.lock'),
    () => undefined,
    async () => {
      if (existsSync(done)) return;
      await mkdir(folder, { recursive: true });
      const source = url === undefined ? content : await withUrl(content, join(folder, 'content'), url);
      const { code, output } = await runCommand(['build'], {
        ...env,
        TANKSIDE_CONTENT: source,
        TANKSIDE_OUT: dist,
      });
      if (code !== 0) throw new Error(`building ${content} ended with ${code}:\n${output}`);
      await writeFile(done, output);
    },
  );
  return { dist, output: await readFile(done, 'utf8') };
}

async function withUrl(content: string, target: string, url: string): Promise<string> {
  await rm(target, { recursive: true, force: true });
  await cp(content, target, { recursive: true });
  const file = join(target, 'site.yaml');
  const text = await readFile(file, 'utf8');
  const changed = text.replace(/^url:.*$/m, `url: ${url}`);
  if (!/^url:/m.test(changed)) throw new Error(`${file} has no url to change`);
  await writeFile(file, changed);
  return target;
}

async function hashOfFolder(folder: string): Promise<string> {
  const hashes = await fileHashes(folder);
  return createHash('sha256')
    .update(JSON.stringify([...hashes]))
    .digest('hex');
}

/** Every file under a folder, by its path with forward slashes and in its order, with its SHA-256. */
export async function fileHashes(folder: string): Promise<Map<string, string>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const hashes = new Map<string, string>();
  for (const file of files.sort()) {
    const path = file.slice(folder.length + 1).replaceAll('\\', '/');
    hashes.set(
      path,
      createHash('sha256')
        .update(await readFile(file))
        .digest('hex'),
    );
  }
  return hashes;
}

export interface CommandOutcome {
  code: number;
  stdout: string;
  stderr: string;
  /** Both, in the order they came. */
  output: string;
}

/** Runs the command line as a process of its own. */
export function runCommand(args: string[], env: Record<string, string> = {}): Promise<CommandOutcome> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, [join(root, 'src', 'commands', 'tankside.ts'), ...args], {
      cwd: root,
      env: { ...withoutVitest(process.env), ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const outcome = { code: 1, stdout: '', stderr: '', output: '' };
    for (const name of ['stdout', 'stderr'] as const) {
      child[name].setEncoding('utf8').on('data', (piece: string) => {
        outcome[name] += piece;
        outcome.output += piece;
      });
    }
    child.on('error', fail);
    child.on('close', (code) => done({ ...outcome, code: code ?? 1 }));
  });
}

/** Vitest sets variables for its own workers that Astro would take for the site's, its base path among them. */
function withoutVitest(env: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const theirs = /^(NODE_ENV|MODE|DEV|PROD|SSR|TEST|BASE_URL|VITE_.*|VITEST.*)$/;
  return Object.fromEntries(Object.entries(env).filter(([name]) => !theirs.test(name)));
}
