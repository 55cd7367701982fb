import type { Library } from '../model/library.ts';
import type { Trial } from '../model/trial.ts';
import { archive } from './archive.ts';
import type { PublishedFile } from './published-file.ts';
import { withoutEmails } from './without-emails.ts';

/** An example is tried over any line: 2 MB. */
const largest = 2_000_000;

/** What an example is made of: never a photograph as it came from the camera, nor a grower's other notes. */
const kept = /^(?:trial\.yaml|(?:layout|harvest|readings)\.csv|factsheet[^/]*\.mdx)$/;

/**
 * The trial whose folder is the example: the newest finished one without a query, or else the newest finished, of
 * those whose folder can be shown whole, without photographs and e-mails that are not public.
 */
export function exampleTrial({ trials }: Library): Trial | null {
  const fit = trials
    .filter(({ trial, findings }) => findings !== null && sizeOf(trial) <= largest && isPublic(trial))
    .map(({ trial }) => trial);
  return fit.find(({ queries }) => queries.length === 0) ?? fit[0] ?? null;
}

function sizeOf({ files }: Trial): number {
  return [...files].reduce((sum, [name, bytes]) => sum + (kept.test(name) ? bytes.length : 0), 0);
}

function isPublic({ files, metadata }: Trial): boolean {
  const text = new TextDecoder().decode(files.get('trial.yaml'));
  return metadata.photos === undefined && withoutEmails(text, metadata.people) === text;
}

/** A trial's folder as the grower keeps it, to be tried on the page of checks and to begin one's own from. */
export function exampleFolder(library: Library): PublishedFile[] {
  const trial = exampleTrial(library);
  if (trial === null) return [];
  const files = [...trial.files].flatMap(([name, bytes]) => (kept.test(name) ? [{ name, bytes }] : []));
  files.sort((a, b) => (a.name < b.name ? -1 : 1));
  const day = trial.metadata.releases?.at(-1)?.date ?? '1980-01-01';
  return [
    {
      name: 'check/example.zip',
      bytes: archive(trial.id, day, files),
      mediaType: 'application/zip',
      description: `The folder of ${trial.metadata.title}, as its grower keeps it.`,
    },
  ];
}
