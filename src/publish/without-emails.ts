import { publicEmail } from '../model/published-metadata.ts';
import type { TrialMetadata } from '../model/trial.ts';

type Person = TrialMetadata['people'][number];

/** An e-mail address within a text. */
const address = /[\p{L}\p{N}._%+'-]+@[\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)+/gu;

/** The raw text of a trial.yaml with every e-mail address in it withheld, comments included, but for those that are public. */
export function withoutEmails(text: string, people: readonly Person[]): string {
  const shown = new Set(people.flatMap((person) => publicEmail(person) ?? []));
  return text.replace(address, (found) => (shown.has(found) ? found : 'withheld'));
}
