import { siteLanguage } from '../check/site-language.ts';
import { writeIn } from '../model/language.ts';
import '../model/messages.ts';
import { readContentFiles } from '../read/folder.ts';

/** Writes in the language of a content folder's site from then on; in English where there is none. */
export async function writeAsSite(content: string): Promise<void> {
  const { site } = await readContentFiles(content);
  writeIn(siteLanguage(site));
}
