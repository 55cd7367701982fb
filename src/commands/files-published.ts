import type { Library } from '../model/library.ts';
import { pagesOnly } from '../publish/pages-only.ts';
import { siteFiles } from '../publish/site-files.ts';
import { publishedFiles } from '../publish/trial-files.ts';
import type { FilesPublished } from '../sheets/check-file-links.ts';

/** What a site will publish, for the links of its sheets: made only where a sheet links to a file of it. */
export function filesPublished(library: Library): { files?: FilesPublished } {
  if (pagesOnly()) return {};
  const files: FilesPublished = (item) =>
    item === null
      ? siteFiles(library).map(({ name }) => name)
      : publishedFiles(item, library).map(({ name }) => `data/${item.trial.id}/${name}`);
  return { files };
}
