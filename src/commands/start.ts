/** `start`: builds the site, then serves it. */
import { run as build } from './build.ts';
import { serve, serveOptions } from './serve.ts';

export async function run(args: string[]): Promise<number> {
  const options = serveOptions(args);
  const code = await build([]);
  return code === 0 ? serve(options) : code;
}
