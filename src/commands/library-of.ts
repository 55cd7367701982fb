/** From a checked content folder to the library that the pages are made from. */
import { withCropsAsHere } from '../compare/crop-as-here.ts';
import { newestFirst } from '../compute/newest-first.ts';
import { siteFindings } from '../compute/site-findings.ts';
import { writeIn } from '../model/language.ts';
import type { Library } from '../model/library.ts';
import '../model/messages.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import type { CheckedContent } from './load-content.ts';
import { type Progress, progressOf } from './progress.ts';

/** What a site is called until its site.yaml can be read; only the development server shows it. */
export const unnamed = {
  title: 'A site without a readable site.yaml',
  url: 'http://localhost/',
  publisher: 'Unknown',
  licence: 'CC0-1.0',
};

/** The library of a content: that which the check of its fact sheets has computed already, where there are any. */
export function libraryOf(content: CheckedContent): Library {
  return content.library ?? computeLibrary(content);
}

/** Computes the findings of every finished trial, in the site's language, and puts the newest trials first. */
export function computeLibrary(
  content: Omit<CheckedContent, 'library'>,
  progress: Progress = progressOf(() => say('Computing')),
): Library {
  writeIn(content.language);
  const sorted = [...content.trials].sort(newestFirst);
  const found = ({ id }: Trial) => content.computed.get(id);
  const trials = siteFindings(sorted, (count) => progress.done(count, sorted.length), found);
  progress.end();
  // Apart from the site's own, whose published findings must not hang on what others publish.
  const gathered = siteFindings(withCropsAsHere(content.gathered, content.trials).sort(newestFirst));
  const { cultivars, factSheets, problems } = content;
  return { site: content.site ?? unnamed, cultivars, trials, factSheets, gathered, problems };
}
