/** `dev`: serves the pages while the content is edited, rechecking and reloading at every change. */
import { extname, relative, sep } from 'node:path';
import { parseArgs } from 'node:util';
import { type AstroIntegration, dev } from 'astro';
import { hasError } from '../model/problem.ts';
import type { Library } from '../model/library.ts';
import { say } from '../model/say.ts';
import { type PublishedFile, publishedFiles, siteFiles } from '../publish/files.ts';
import { provideLibrary } from '../publish/library.ts';
import { report } from './check.ts';
import { contentFolder, presentContentFolder, root } from './folders.ts';
import { inPlainWords } from './in-plain-words.ts';
import { libraryOf } from './library-of.ts';
import { loadContent } from './load-content.ts';
import { makePhotographs } from './make-photographs.ts';
import { mediaType } from './media-type.ts';
import { untilTold } from './until-told.ts';

/** Edits that come in one breath are checked once. */
const breath = 150;

export async function run(args: string[]): Promise<number> {
  parseArgs({ args, options: {} });
  presentContentFolder();
  let library = await reload();
  provideLibrary(() => Promise.resolve(library));
  const base = new URL(library.site.url).pathname;
  const server = await dev({
    root,
    base,
    site: new URL(library.site.url).origin,
    integrations: [
      editedContent(
        async () => (library = await reload()),
        () => library,
        base,
      ),
    ],
  });
  await untilTold();
  await server.stop();
  return 0;
}

/** The photographs as they stand, served from memory. */
let photographs: readonly PublishedFile[] = [];

async function reload(): Promise<Library> {
  const content = await loadContent(contentFolder());
  process.stderr.write(report(content.problems));
  if (hasError(content.problems))
    process.stderr.write(`${say('Trials with errors are left out until they are mended.')}\n`);
  const library = libraryOf(content);
  const made = await makePhotographs(library);
  if (made.problems.length > 0) process.stderr.write(report(made.problems));
  photographs = made.files;
  return library;
}

/** Watches the content folder, and serves the published files, which have no page. */
function editedContent(
  recheck: () => Promise<Library>,
  current: () => Library,
  base: string,
): AstroIntegration {
  return {
    name: 'tankside-edited-content',
    hooks: {
      'astro:server:setup': ({ server }) => {
        const folder = contentFolder();
        let waiting: NodeJS.Timeout | undefined;
        let checking = Promise.resolve();
        server.watcher.add(folder);
        server.watcher.on('all', (_event, path) => {
          if (relative(folder, path).startsWith(`..${sep}`)) return;
          clearTimeout(waiting);
          waiting = setTimeout(() => {
            // One after the other, so that what was saved last is what is shown.
            checking = checking.then(() => show(server, recheck));
          }, breath);
        });
        server.middlewares.use((request, response, next) => {
          const address = decodeURIComponent((request.url ?? '/').split('?')[0]!);
          const name = address.startsWith(base) ? address.slice(base.length) : address.slice(1);
          const bytes = publishedBytes(current(), name);
          if (bytes === undefined) return next();
          response.setHeader('Content-Type', mediaType(extname(name)));
          response.end(bytes);
        });
      },
    },
  };
}

type DevServer = Parameters<NonNullable<AstroIntegration['hooks']['astro:server:setup']>>[0]['server'];

/** Checks again and has the pages reloaded. What nobody foresaw leaves the server running, to be mended and saved again. */
async function show(server: DevServer, recheck: () => Promise<Library>): Promise<void> {
  try {
    await recheck();
  } catch (error) {
    const why = error instanceof Error ? (inPlainWords(error) ?? error.message) : String(error);
    process.stderr.write(`${say('The content could not be taken up: {why}', { why })}\n`);
    return;
  }
  // Which trials have a page is asked once and kept, until Astro is told that content changed.
  for (const name of ['ssr', 'prerender']) server.environments[name]?.hot.send('astro:content-changed', {});
  server.ws.send({ type: 'full-reload' });
}

function publishedBytes(library: Library, name: string): Uint8Array | undefined {
  const [, id, file] = /^data\/([^/]+)\/(.+)$/.exec(name) ?? [];
  const item = library.trials.find(({ trial, findings }) => trial.id === id && findings !== null);
  const picture = photographs.find((each) => each.name === name);
  if (picture) return picture.bytes;
  const files = item ? publishedFiles(item, library) : /\.[a-z]+$/.test(name) ? siteFiles(library) : [];
  return files.find((each) => each.name === (item ? file : name))?.bytes;
}
