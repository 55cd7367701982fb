/** One file from another site, whole and within limits, or a sentence that says why not. */
import { say } from '../../model/say.ts';

/** By what a site is asked whether a file changed since. */
export interface Validators {
  etag: string | null;
  last_modified: string | null;
}

export interface FetchOptions {
  /** More bytes than this are refused, whatever was announced. */
  mostBytes: number;
  /** The whole answer has to be here by then, not only its beginning. */
  milliseconds: number;
  /** What the copy at hand was given with: the answer may then be that nothing changed. */
  known?: Validators;
}

export type Fetched =
  | { kind: 'bytes'; bytes: Uint8Array; address: string; validators: Validators }
  | { kind: 'unchanged' }
  | { kind: 'unreachable' | 'refused'; why: string };

const mostRedirects = 5;

/**
 * Fetches a file. A redirect is followed within its host only, since another host is not the one that site.yaml
 * names; what comes is counted as it comes, since a header may lie and a small answer may unpack to a large one.
 */
export async function fetchBytes(from: string, options: FetchOptions): Promise<Fetched> {
  const signal = AbortSignal.timeout(options.milliseconds);
  let address = from;
  try {
    for (let redirects = 0; redirects <= mostRedirects; redirects += 1) {
      const response = await fetch(address, { redirect: 'manual', signal, headers: headers(options.known) });
      const to = response.headers.get('location');
      if (response.status < 300 || response.status > 399 || to === null) {
        return await answer(response, address, options);
      }
      await response.body?.cancel();
      const next = URL.parse(to, address);
      if (next === null || !isSameHost(new URL(address), next)) {
        return { kind: 'refused', why: anotherHost(next) };
      }
      address = next.href;
    }
    return { kind: 'refused', why: say('it leads on more than {most} times', { most: mostRedirects }) };
  } catch (error) {
    if (signal.aborted) {
      return {
        kind: 'unreachable',
        why: say('it took longer than {seconds} s', { seconds: options.milliseconds / 1000 }),
      };
    }
    return { kind: 'unreachable', why: reasonOf(error) };
  }
}

function anotherHost(next: URL | null): string {
  return next === null
    ? say('it leads to another host: none')
    : say('it leads to another host: {host}', { host: next.host });
}

function headers(known: Validators = { etag: null, last_modified: null }): Record<string, string> {
  return {
    // What is not packed cannot unpack to more than it seems.
    'accept-encoding': 'identity',
    'user-agent': 'tankside',
    ...(known.etag === null ? {} : { 'if-none-match': known.etag }),
    ...(known.last_modified === null ? {} : { 'if-modified-since': known.last_modified }),
  };
}

/** The same host and port; from http to https is allowed, back is not. */
function isSameHost(from: URL, to: URL): boolean {
  if (to.username !== '' || to.password !== '') return false;
  if (to.protocol === from.protocol) return to.host === from.host;
  return (
    from.protocol === 'http:' && to.protocol === 'https:' && to.host === from.hostname && from.port === ''
  );
}

async function answer(
  response: Response,
  address: string,
  { mostBytes, known }: FetchOptions,
): Promise<Fetched> {
  if (response.status === 304 && known !== undefined) return { kind: 'unchanged' };
  if (response.status !== 200) {
    await response.body?.cancel();
    const kind = response.status >= 500 ? 'unreachable' : 'refused';
    return { kind, why: say('the answer is {status} and not 200', { status: response.status }) };
  }
  const announced = Number(response.headers.get('content-length') ?? 0);
  const bytes = announced > mostBytes ? null : await within(response, mostBytes);
  if (bytes === null) {
    await response.body?.cancel().catch(() => undefined);
    return { kind: 'refused', why: say('it is larger than {most} bytes', { most: mostBytes }) };
  }
  const validators = {
    etag: response.headers.get('etag'),
    last_modified: response.headers.get('last-modified'),
  };
  return { kind: 'bytes', bytes, address, validators };
}

/** The body, or null as soon as it is larger than allowed. */
async function within(response: Response, mostBytes: number): Promise<Uint8Array | null> {
  const pieces: Uint8Array[] = [];
  let length = 0;
  for await (const piece of response.body ?? []) {
    length += piece.length;
    // Leaving the loop ends the connection.
    if (length > mostBytes) return null;
    pieces.push(piece);
  }
  return Buffer.concat(pieces, length);
}

/** The cause that lies under "fetch failed", in words where it is a common one. */
function reasonOf(error: unknown): string {
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  const words: Record<string, string> = {
    ECONNREFUSED: say('nothing answers there'),
    ECONNRESET: say('the connection was cut'),
    ENOTFOUND: say('there is no such host'),
    EAI_AGAIN: say('the host’s name cannot be looked up'),
    UND_ERR_SOCKET: say('the answer ended before its end'),
    ETIMEDOUT: say('nothing answers there in time'),
  };
  return words[code] ?? (cause instanceof Error ? cause.message.slice(0, 200) : say('the connection failed'));
}
