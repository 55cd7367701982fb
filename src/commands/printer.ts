/**
 * Prints pages of a built site to PDF through an installed Chromium, over its DevTools protocol and a pair of pipes.
 * The browser is given the files under the address that the site will have, so that links in the PDF lead there,
 * and reaches no network.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join, resolve, sep } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { say } from '../model/say.ts';
import { mediaType } from './media-type.ts';

export const papers = ['letter', 'a4'] as const;
export type Paper = (typeof papers)[number];

/** Width and height in inches, as the protocol asks for them: 215.9 by 279.4 mm, and 210 by 297 mm (ISO 216). */
const sizes: Readonly<Record<Paper, readonly [number, number]>> = {
  letter: [8.5, 11],
  a4: [210 / 25.4, 297 / 25.4],
};

export interface Printer {
  /** The PDF of the page at an address: tagged, with an outline, and dated `day`, so that it is alike at each printing. */
  pdf(url: string, paper: Paper, day: string): Promise<Buffer>;
  close(): Promise<void>;
}

/** Longer than any sheet takes to print. */
const mostSeconds = 60;

type Send = (method: string, params?: object, session?: string) => Promise<Record<string, unknown>>;

/** Pictures that would load only when scrolled to are loaded at once, and typefaces waited for. */
const settle = `(async () => {
  for (const image of document.images) image.loading = 'eager';
  await Promise.all([...document.images].map((image) => image.decode().catch(() => {})));
  await document.fonts.ready;
})()`;

/**
 * Starts a Chromium without a window, for the pages of a built site.
 *
 * @param folder of the built site
 * @param site the address that the site will have
 */
export async function startPrinter(browser: string, folder: string, site: string): Promise<Printer> {
  const profile = await mkdtemp(join(tmpdir(), 'tankside-print-'));
  const child = spawn(
    browser,
    [
      '--headless',
      '--remote-debugging-pipe',
      '--no-first-run',
      '--disable-gpu',
      '--disable-extensions',
      `--user-data-dir=${profile}`,
      // As root, which is usual in a container, Chromium starts without its sandbox only.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      'about:blank',
    ],
    { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] },
  );
  const ended = new Promise<void>((done) => {
    child.once('exit', () => {
      done();
    });
    child.once('error', () => {
      done();
    });
  });
  const { send, waitFor, on } = talk(child.stdio[3] as Writable, child.stdio[4] as Readable, ended);
  const print = async (url: string, paper: Paper, day: string): Promise<Buffer> => {
    const { targetId } = await send('Target.createTarget', { url: 'about:blank' });
    const { sessionId } = await send('Target.attachToTarget', { targetId, flatten: true });
    const session = String(sessionId);
    await send('Page.enable', {}, session);
    await send('Fetch.enable', { patterns: [{ urlPattern: '*' }] }, session);
    on('Fetch.requestPaused', session, ({ requestId, request }) => {
      answer(folder, site, (request as { url: string }).url)
        .then((found) => send('Fetch.fulfillRequest', { requestId, ...found }, session))
        .catch(() => undefined);
    });
    const loaded = waitFor('Page.loadEventFired', session);
    await send('Page.navigate', { url }, session);
    await loaded;
    await send('Runtime.evaluate', { expression: settle, awaitPromise: true }, session);
    const [paperWidth, paperHeight] = sizes[paper];
    const how = {
      paperWidth,
      paperHeight,
      printBackground: false,
      generateTaggedPDF: true,
      generateDocumentOutline: true,
    };
    const { data } = await send('Page.printToPDF', how, session);
    await send('Target.closeTarget', { targetId });
    return alikeEachTime(Buffer.from(String(data), 'base64'), day);
  };
  const pdf = async (url: string, paper: Paper, day: string): Promise<Buffer> => {
    // A browser that hangs is ended, which ends the printing with a sentence.
    const patience = setTimeout(() => child.kill(), mostSeconds * 1000);
    return print(url, paper, day).finally(() => {
      clearTimeout(patience);
    });
  };
  const close = async (): Promise<void> => {
    child.kill();
    await ended;
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  };
  return { pdf, close };
}

/** The file of a built site that an address names, as the protocol takes it. */
async function answer(folder: string, site: string, url: string): Promise<object> {
  const { origin, pathname } = new URL(url);
  const base = new URL(site.replace(/\/*$/, '/'));
  if (origin !== base.origin || !pathname.startsWith(base.pathname)) return { responseCode: 404 };
  const name = decodeURIComponent(pathname.slice(base.pathname.length));
  const path = resolve(folder, name === '' || name.endsWith('/') ? `${name}index.html` : name);
  if (!path.startsWith(resolve(folder) + sep)) return { responseCode: 404 };
  const bytes = await readFile(path).catch(() => null);
  if (bytes === null) return { responseCode: 404 };
  const responseHeaders = [{ name: 'Content-Type', value: mediaType(extname(path)) }];
  return { responseCode: 200, responseHeaders, body: bytes.toString('base64') };
}

/** Messages end with a zero byte; an answer has the number of its question. */
function talk(
  to: Writable,
  from: Readable,
  ended: Promise<void>,
): {
  send: Send;
  waitFor: (method: string, session: string) => Promise<void>;
  on: (method: string, session: string, hear: (params: Record<string, unknown>) => void) => void;
} {
  interface Message {
    params?: Record<string, unknown>;
    id?: number;
    method?: string;
    sessionId?: string;
    result?: Record<string, unknown>;
    error?: { message: string };
  }
  const waiting = new Set<(message: Message) => void>();
  let rest = '';
  from.setEncoding('utf8').on('data', (text: string) => {
    const parts = (rest + text).split('\0');
    rest = parts.pop() ?? '';
    for (const part of parts) for (const hear of [...waiting]) hear(JSON.parse(part) as Message);
  });
  to.on('error', () => undefined);
  const stopped = ended.then(() => {
    throw new Error(say('The browser ended before it had printed'));
  });
  stopped.catch(() => undefined);
  const next = (fits: (message: Message) => boolean): Promise<Message> => {
    const heard = new Promise<Message>((done) => {
      const hear = (message: Message): void => {
        if (!fits(message)) return;
        waiting.delete(hear);
        done(message);
      };
      waiting.add(hear);
    });
    return Promise.race([heard, stopped]);
  };
  let asked = 0;
  const send: Send = async (method, params = {}, sessionId) => {
    const id = (asked += 1);
    const answer = next((message) => message.id === id);
    to.write(
      `${JSON.stringify({ id, method, params, ...(sessionId === undefined ? {} : { sessionId }) })}\0`,
    );
    const { result, error } = await answer;
    if (error !== undefined)
      throw new Error(say('The browser could not print: {message}', { message: error.message }));
    return result ?? {};
  };
  const waitFor = async (method: string, session: string): Promise<void> => {
    await next((message) => message.method === method && message.sessionId === session);
  };
  const on = (method: string, session: string, hear: (params: Record<string, unknown>) => void): void => {
    waiting.add((message) => {
      if (message.method === method && message.sessionId === session) hear(message.params ?? {});
    });
  };
  return { send, waitFor, on };
}

/**
 * A PDF as every printing makes it: dated to a day, and with the names of its tags counted from 1, where the
 * browser counts on from whatever it did before. No byte is added or taken away, so that no offset moves, and the
 * names keep their order.
 */
function alikeEachTime(pdf: Buffer, day: string): Buffer {
  const text = pdf.toString('latin1');
  const written = `D:${day.replaceAll('-', '')}000000`;
  const names = [...new Set(text.match(/\(node\d{8}\)/g))].sort();
  const counted = new Map(names.map((name, index) => [name, `(node${String(index + 1).padStart(8, '0')})`]));
  const same = text
    .replaceAll(/\/(?:CreationDate|ModDate) ?\(D:\d{14}/g, (found) => found.replace(/D:\d{14}$/, written))
    .replaceAll(/\(node\d{8}\)/g, (name) => counted.get(name) ?? name);
  return Buffer.from(same, 'latin1');
}
