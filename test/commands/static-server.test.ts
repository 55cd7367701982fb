import { symlink, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { serveFolder, type ServerOptions } from '../../src/commands/static-server.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const files = {
  'public/index.html': '<h1>home</h1>',
  'public/404.html': '<h1>not here</h1>',
  'public/trials/a/index.html': '<h1>a</h1>',
  'public/data/weights.csv': 'container,row\n',
  'public/data/catalog.jsonld': '{}',
  'public/data/SHA256SUMS': '0\n',
  'public/data/two words.txt': 'two words',
  'secret.txt': 'secret',
};

async function serve(options: ServerOptions = {}) {
  const folder = await temporaryFolder(files);
  const server = await serveFolder(join(folder, 'public'), { host: '127.0.0.1', ...options });
  onTestFinished(() => server.close());
  return { folder, ...server };
}

/** Unlike fetch, sends the path as it is written, dots and all. */
function rawStatus(url: string, path: string, method = 'GET'): Promise<number | undefined> {
  const { hostname, port } = new URL(url);
  return new Promise((done, fail) => {
    const sent = request({ hostname, port, path, method }, (response) => {
      response.resume();
      done(response.statusCode);
    });
    sent.on('error', fail).end();
  });
}

test('serves a folder’s index, and files by their media type', async () => {
  const { url } = await serve();
  expect(await (await fetch(url)).text()).toBe('<h1>home</h1>');
  expect(await (await fetch(`${url}trials/a/`)).text()).toBe('<h1>a</h1>');
  expect(await (await fetch(`${url}data/two%20words.txt`)).text()).toBe('two words');
  const typeOf = async (path: string) => (await fetch(url + path)).headers.get('content-type');
  expect(await typeOf('')).toBe('text/html; charset=utf-8');
  expect(await typeOf('data/weights.csv')).toBe('text/csv; charset=utf-8');
  expect(await typeOf('data/catalog.jsonld')).toBe('application/ld+json; charset=utf-8');
  expect(await typeOf('data/SHA256SUMS')).toBe('text/plain; charset=utf-8');
});

test('sends a folder without its slash to the address with it, keeping the query', async () => {
  const { url } = await serve();
  const response = await fetch(`${url}trials/a?units=us`, { redirect: 'manual' });
  expect(response.status).toBe(301);
  expect(response.headers.get('location')).toBe('/trials/a/?units=us');
});

test('answers a missing page with the site’s 404 page', async () => {
  const { url } = await serve();
  for (const path of ['nothing', 'trials/', 'index.html/', 'data/weights.csv/', '%E0%A4%A', 'a%00b']) {
    const response = await fetch(url + path);
    expect(response.status, path).toBe(404);
    expect(await response.text()).toBe('<h1>not here</h1>');
  }
});

test('never leaves the folder', async () => {
  const { folder, url } = await serve();
  await symlink(join(folder, 'secret.txt'), join(folder, 'public', 'link.txt'));
  const paths = ['/../secret.txt', '/%2e%2e/secret.txt', '/trials/..%2f..%2fsecret.txt', '/..%5csecret.txt'];
  for (const path of [...paths, '/link.txt']) expect(await rawStatus(url, path), path).toBe(404);
  const away = await fetch(`${url}/example.org/..`, { redirect: 'manual' });
  expect(away.headers.get('location') ?? '').not.toMatch(/^\/\//);
});

test('stands under a base path, sends the root to it, and knows nothing beside it', async () => {
  const { url } = await serve({ base: 'garden' });
  expect(new URL(url).pathname).toBe('/garden/');
  expect((await fetch(url)).status).toBe(200);
  const { origin } = new URL(url);
  for (const path of ['/', '/garden']) {
    const response = await fetch(origin + path, { redirect: 'manual' });
    expect([response.status, response.headers.get('location')]).toEqual([301, '/garden/']);
  }
  expect((await fetch(`${origin}/trials/a/`)).status).toBe(404);
});

test('answers HEAD without a body and refuses to be written to', async () => {
  const { url } = await serve();
  const head = await fetch(`${url}data/weights.csv`, { method: 'HEAD' });
  expect(head.headers.get('content-length')).toBe('14');
  expect(await head.text()).toBe('');
  expect(await rawStatus(url, '/', 'POST')).toBe(405);
});

test('takes the next port where the first is taken', async () => {
  const first = await serve();
  const port = Number(new URL(first.url).port);
  const second = await serve({ port });
  expect(Number(new URL(second.url).port)).toBeGreaterThan(port);
});

test('says that a file did not change to who has it, and sends it anew once it did', async () => {
  const { url, folder } = await serve();
  const file = `${url}data/weights.csv`;
  const first = await fetch(file);
  const etag = first.headers.get('etag')!;
  expect(new Date(first.headers.get('last-modified')!).getTime()).toBeGreaterThan(Date.now() - 3_600_000);
  const again = await fetch(file, { headers: { 'if-none-match': etag } });
  expect([again.status, await again.text()]).toEqual([304, '']);
  await writeFile(join(folder, 'public', 'data', 'weights.csv'), 'container,row,column\n');
  const changed = await fetch(file, { headers: { 'if-none-match': etag } });
  expect([changed.status, await changed.text()]).toEqual([200, 'container,row,column\n']);
  expect((await fetch(`${url}nothing`)).headers.get('etag')).toBeNull();
});
