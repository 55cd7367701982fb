/** `serve`: the built site on this machine, until Ctrl-C. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { say } from '../model/say.ts';
import { basePath } from './base-path.ts';
import { contentFolder, outputFolder } from './folders.ts';
import { serveFolder, type ServerOptions } from './static-server.ts';
import { untilTold } from './until-told.ts';
import { wrongUse } from './usage.ts';
import { writeAsSite } from './write-as-site.ts';

const PORT = 4321;

export async function run(args: string[]): Promise<number> {
  return serve(serveOptions(args));
}

/** The options of `serve` and `start`. */
export function serveOptions(args: string[]): ServerOptions {
  const { values } = parseArgs({ args, options: { port: { type: 'string' }, host: { type: 'string' } } });
  const options: ServerOptions = { port: PORT };
  if (values.host !== undefined) options.host = values.host;
  if (values.port !== undefined) {
    options.port = Number(values.port);
    if (!/^\d{1,5}$/.test(values.port) || options.port > 65_535) {
      throw wrongUse(`--port is a number from 0 to 65535; found "${values.port.slice(0, 60)}".`);
    }
  }
  return options;
}

/** Serves the built site until the process is told to end. */
export async function serve(options: ServerOptions): Promise<number> {
  await writeAsSite(contentFolder());
  const folder = outputFolder();
  if (!existsSync(join(folder, 'index.html'))) {
    process.stderr.write(
      `${say('There is no built site yet. Build it with `npm run build`, or use `npm start`.')}\n`,
    );
    return 1;
  }
  const ended = untilTold();
  const server = await serveFolder(folder, { base: await basePath(folder), ...options });
  process.stdout.write(`${say('The site is at {url}', { url: server.url })}\n${say('Ctrl-C ends it.')}\n`);
  await ended;
  await server.close();
  return 0;
}
