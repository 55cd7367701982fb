import type { Library, TrialWithFindings } from '../model/library.ts';
import { dataset, type Dataset } from './dataset.ts';

function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/** A dataset as a sentence cites it: people, year, title, version, publisher, address. */
export function citationOf(set: Dataset): string {
  const people = listed(set.creators.map((person) => person.name.full));
  const year = set.released.slice(0, 4);
  // "Fernhollow & Co." ends with the full stop that it needs.
  const publisher = set.publisher.replace(/\.$/, '');
  return `${people} (${year}). ${set.title} (version ${set.version}) [Data set]. ${publisher}. ${set.identifier}`;
}

/** How to cite a trial's dataset, in one plain sentence without markup. */
export function citationSentence(item: TrialWithFindings, library: Library): string {
  return citationOf(dataset(item, library));
}
