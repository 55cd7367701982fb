import type { TrialWithFindings } from '../../model/library.ts';

/** What became of a reader's own trial. */
export interface OwnTrialOutcome {
  /** Whether it stands among the published trials now. */
  takesPart: boolean;
  /** What became of it, in a sentence for the reader: where it stands now, or why it takes no part. */
  sentence: string;
}

/** The page that shows the comparison. */
export interface OwnTrialTaker {
  add: (own: TrialWithFindings) => Promise<OwnTrialOutcome>;
  remove: (id: string) => void;
}

const held = new Set<string>();
let settle: (taker: OwnTrialTaker) => void;
const taker = new Promise<OwnTrialTaker>((resolve) => {
  settle = resolve;
});

/**
 * Adds a reader's own trial, already checked and its findings computed, to what the page compares, marked as not
 * published in figure, table and sentence. The page turns to the trial's crop. One of the same id takes the place
 * of that before. Nothing of it goes into the address or leaves the browser.
 *
 * @param own the trial and its findings; null findings (not finished) take no part, which the outcome says
 * @returns what became of it, once the page's data have come; rejected where they cannot be fetched
 */
export async function addOwnTrial(own: TrialWithFindings): Promise<OwnTrialOutcome> {
  const page = await taker;
  const outcome = await page.add(own);
  if (outcome.takesPart) held.add(own.trial.id);
  else held.delete(own.trial.id);
  return outcome;
}

/** Takes a reader's own trial away again; nothing happens where it is not there. */
export async function removeOwnTrial(id: string): Promise<void> {
  if (!held.delete(id)) return;
  (await taker).remove(id);
}

/** How the page makes itself known; called once. */
export function takeOwnTrials(page: OwnTrialTaker): void {
  settle(page);
}
