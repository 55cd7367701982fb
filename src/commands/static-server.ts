/** A small static server of a built site, for looking at it on this machine and for the browser tests. */
import { createReadStream, type Stats } from 'node:fs';
import { realpath, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, resolve, sep } from 'node:path';
import { mediaType } from './media-type.ts';

export interface ServerOptions {
  /** The path that the site stands under, such as `/` or `/garden/`. */
  base?: string;
  /** The port to try first; the following are tried where it is taken. 0 takes any free one. */
  port?: number;
  host?: string;
}

export interface StaticServer {
  /** The address of the site's home page. */
  url: string;
  close(): Promise<void>;
}

const PORTS_TRIED = 20;

/** Serves a folder until closed. */
export async function serveFolder(folder: string, options: ServerOptions = {}): Promise<StaticServer> {
  const { host = 'localhost', port = 0 } = options;
  const base = withSlashes(options.base ?? '/');
  const root = await realpath(folder);
  const server = createServer((request, response) => {
    answer(root, base, request, response).catch((error: unknown) => {
      plain(response, 500, error instanceof Error ? error.message : 'unknown fault');
    });
  });
  await listen(server, host, port);
  const { port: taken } = server.address() as AddressInfo;
  return { url: `http://${host}:${taken}${base}`, close: () => close(server) };
}

function withSlashes(base: string): string {
  const bare = base.replace(/^\/+|\/+$/g, '');
  return bare === '' ? '/' : `/${bare}/`;
}

async function listen(server: Server, host: string, first: number): Promise<void> {
  for (let port = first; ; port++) {
    try {
      await new Promise<void>((done, fail) => {
        server.once('error', fail);
        server.listen(port, host, () => {
          server.off('error', fail);
          done();
        });
      });
      return;
    } catch (error) {
      const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!taken || port - first + 1 >= PORTS_TRIED) throw error;
    }
  }
}

function close(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}

async function answer(root: string, base: string, request: IncomingMessage, response: ServerResponse) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    return plain(response, 405, 'Only GET and HEAD are answered here.');
  }
  const [address = '/', query] = (request.url ?? '/').split('?', 2);
  if (address === '/' && base !== '/') return redirect(response, base);
  if (`${address}/` === base) return redirect(response, base);
  const path = address.startsWith(base) ? decoded(address.slice(base.length)) : undefined;
  const found = path === undefined ? undefined : await find(root, path);
  if (found === 'folder') return redirect(response, `${address}/${query === undefined ? '' : `?${query}`}`);
  if (found !== undefined) return send(request, response, 200, found);
  const missing = await find(root, '404.html');
  if (missing === undefined || missing === 'folder') return plain(response, 404, 'There is no such page.');
  return send(request, response, 404, missing);
}

function decoded(path: string): string | undefined {
  try {
    const text = decodeURIComponent(path);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}

interface Found {
  file: string;
  stats: Stats;
}

/** The file an address names, never one outside the folder, not even through a symbolic link. */
async function find(root: string, path: string): Promise<Found | 'folder' | undefined> {
  const wanted = resolve(root, `.${sep}${path}`);
  try {
    const real = await realpath(wanted);
    if (real !== root && !real.startsWith(root + sep)) return undefined;
    const stats = await stat(real);
    if (stats.isFile()) return path.endsWith('/') ? undefined : { file: real, stats };
    if (path !== '' && !path.endsWith('/')) return 'folder';
    const index = join(real, 'index.html');
    return { file: index, stats: await stat(index) };
  } catch {
    return undefined;
  }
}

function send(request: IncomingMessage, response: ServerResponse, status: number, { file, stats }: Found) {
  // Of the size and the time: a file is the same as long as both are.
  const etag = `"${stats.size.toString(16)}-${Math.trunc(stats.mtimeMs).toString(16)}"`;
  if (status === 200 && request.headers['if-none-match'] === etag) {
    response.writeHead(304, { ETag: etag, 'Cache-Control': 'no-cache' });
    response.end();
    return;
  }
  response.writeHead(status, {
    'Content-Type': mediaType(extname(file)),
    'Content-Length': stats.size,
    'Cache-Control': 'no-cache',
    'X-Content-Type-Options': 'nosniff',
    ...(status === 200 ? { ETag: etag, 'Last-Modified': stats.mtime.toUTCString() } : {}),
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
}

function redirect(response: ServerResponse, to: string): void {
  // One slash at the start: `//host/` would be another host's address.
  response.writeHead(301, { Location: to.replace(/^\/{2,}/, '/') });
  response.end();
}

function plain(response: ServerResponse, status: number, text: string): void {
  if (!response.headersSent) response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  response.end(`${text}\n`);
}
