/** Another grower's site on localhost, which can be made to misbehave. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { libraryOf } from '../../src/commands/library-of.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { writeFiles } from '../../src/commands/write-files.ts';
import { goodFiles } from '../check/good-folder.ts';
import { temporaryFolder } from './temporary-folder.ts';

const silent = { done: () => undefined, end: () => undefined };

/** Answers a request in its own way, or lets the file be served by answering false. */
export type Misbehaviour = (request: IncomingMessage, response: ServerResponse) => boolean;

export interface OtherSite {
  /** The address of its home page. */
  address: string;
  /** The folder that is served. */
  folder: string;
  /** Every request so far: its path, and the status of the answer. */
  requests: { path: string; status: number }[];
  /** What it does instead of serving its files. */
  misbehave(how: Misbehaviour | null): void;
  /** Publishes other trials, each with its files, in the place of those before. */
  publish(trials: Record<string, ReadonlyMap<string, string>>): Promise<void>;
  close(): Promise<void>;
}

/** A trial folder's files, with words in them replaced. */
export function trialFiles(...replaced: (readonly [string | RegExp, string])[]): Map<string, string> {
  const files = goodFiles();
  for (const [path, text] of files) {
    files.set(
      path,
      replaced.reduce((changed, [from, to]) => changed.replaceAll(from, to), text),
    );
  }
  return files;
}

/** The content folder of a grower, written anew. */
export async function writeContent(
  folder: string,
  shared: { site: string; cultivars: string },
  trials: Record<string, ReadonlyMap<string, string>>,
): Promise<void> {
  await mkdir(join(folder, 'trials'), { recursive: true });
  await writeFile(join(folder, 'site.yaml'), shared.site);
  await writeFile(join(folder, 'cultivars.yaml'), shared.cultivars);
  for (const [id, files] of Object.entries(trials)) {
    for (const [path, text] of files) {
      await mkdir(dirname(join(folder, 'trials', id, path)), { recursive: true });
      await writeFile(join(folder, 'trials', id, path), text);
    }
  }
}

/** Publishes the data of a site and serves it under /garden/ until the test ends. */
export async function otherSite(
  cultivars: string,
  trials: Record<string, ReadonlyMap<string, string>>,
): Promise<OtherSite> {
  const folder = await temporaryFolder();
  const requests: OtherSite['requests'] = [];
  let how: Misbehaviour | null = null;
  const server = createServer((request, response) => {
    const path = request.url ?? '';
    response.on('close', () => requests.push({ path, status: response.statusCode }));
    if (how?.(request, response) !== true) void serve(folder, request, response);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/garden/`;
  const close = (): Promise<void> => {
    server.closeAllConnections();
    return new Promise((done) => server.close(() => done()));
  };
  onTestFinished(async () => {
    if (server.listening) await close();
  });
  const site = `title: Trials at Otterbrook\nurl: ${address}\npublisher: Otterbrook\nlicence: CC0-1.0\n`;
  const publish = async (next: Record<string, ReadonlyMap<string, string>>): Promise<void> => {
    const content = await temporaryFolder();
    await writeContent(content, { site, cultivars }, next);
    const checked = await loadContent(content, silent);
    writeFiles(libraryOf(checked), [], folder, silent);
  };
  await publish(trials);
  return { address, folder, requests, misbehave: (next) => void (how = next), publish, close };
}

async function serve(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const path = (request.url ?? '').replace(/^\/garden\//, '');
  const bytes = await readFile(join(folder, path)).catch(() => null);
  if (bytes === null) {
    response.writeHead(404).end('There is no such page.');
    return;
  }
  const etag = `"${bytes.length}-${bytes.at(-100) ?? 0}-${bytes.reduce((sum, byte) => (sum * 31 + byte) >>> 0, 7)}"`;
  if (request.headers['if-none-match'] === etag) response.writeHead(304, { etag }).end();
  else response.writeHead(200, { etag, 'content-length': bytes.length }).end(bytes);
}
