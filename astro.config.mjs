import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';
import { fileURLToPath } from 'node:url';

const entities = 'decode-named-character-reference';

// The commands add what the content decides: site and base from site.yaml's url, outDir from TANKSIDE_OUT.
export default defineConfig({
  // For pages of the program's own: a fact sheet is read and never compiled (src/sheets).
  integrations: [mdx()],
  output: 'static',
  trailingSlash: 'ignore',
  // Lossless: the default drops the line breaks that stand between two words of a sentence.
  compressHTML: true,
  // Several pages at once: one is computed while others wait for the disk.
  build: { format: 'directory', assets: 'assets', inlineStylesheets: 'never', concurrency: 8 },
  devToolbar: { enabled: false },
  // Scripts and styles stay files of their own, so that the content policy needs no exception for them.
  vite: {
    build: { assetsInlineLimit: 0 },
    // Its version for pages asks the document what an entity stands for, and the check's worker has none.
    resolve: { alias: { [entities]: fileURLToPath(import.meta.resolve(entities)) } },
  },
});
