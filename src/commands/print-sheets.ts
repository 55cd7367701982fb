/** With `TANKSIDE_PDF=1` a build prints every fact sheet on both papers, beside its page. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Library } from '../model/library.ts';
import { fileSize } from '../publish/file-size.ts';
import { pdfName, sheetPages } from '../publish/sheet-pages.ts';
import { findBrowser } from './browser.ts';
import { noBrowser } from './print.ts';
import { papers, startPrinter } from './printer.ts';

/** Whether a build is to print the sheets too. */
export function printsSheets(): boolean {
  return process.env['TANKSIDE_PDF'] === '1';
}

/** Prints the sheets of a site that was just built, and writes the size of each PDF beside its link. */
export async function printSheets(library: Library, output: string): Promise<void> {
  const pages = sheetPages(library);
  if (!printsSheets() || pages.length === 0) return;
  const browser = findBrowser();
  if (browser === undefined) throw new Error(noBrowser());
  const { url } = library.site;
  const printer = await startPrinter(browser, output, url);
  try {
    for (const { path, date } of pages) {
      const page = join(output, path, 'index.html');
      let html = await readFile(page, 'utf8');
      for (const paper of papers) {
        const pdf = await printer.pdf(url.replace(/\/*$/, '/') + path, paper, date);
        const file = join(output, path, pdfName(paper));
        await mkdir(dirname(file), { recursive: true });
        await writeFile(file, pdf);
        html = html.replace(`<!--size of ${pdfName(paper)}-->`, `, ${fileSize(pdf.length)}`);
      }
      await writeFile(page, html);
    }
  } finally {
    await printer.close();
  }
}
