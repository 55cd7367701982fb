import { newestFirst } from '../compute/newest-first.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import { madeOnce } from './made-once.ts';

/** The site's own trials and those gathered from other sites, newest first: what comparisons and lists are made of. */
export const everyTrial = madeOnce('every-trial', (library: Library): readonly TrialWithFindings[] => {
  const { trials, gathered = [] } = library;
  if (gathered.length === 0) return trials;
  return [...trials, ...gathered].sort((a, b) => newestFirst(a.trial, b.trial));
});
