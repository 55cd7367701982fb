/** Makes of a module of ours, with all that it imports, one script that a browser loads. */
import { build } from 'vite';

/** The script's text: a module with the entry's exports. Vite is the bundler that Astro makes the pages' scripts with. */
export async function bundleForBrowser(entry: string): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: false, lib: { entry, formats: ['es'], fileName: 'bundle' } },
  });
  const outputs = Array.isArray(made)
    ? made.flatMap(({ output }) => output)
    : 'output' in made
      ? made.output
      : [];
  const [chunk] = outputs.filter((output) => output.type === 'chunk');
  if (chunk === undefined) throw new Error(`bundling ${entry} gave no script`);
  return chunk.code;
}
