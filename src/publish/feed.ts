import type { Library } from '../model/library.ts';
import { address, siteAddress } from './addresses.ts';
import { dataset, finished, type Dataset } from './dataset.ts';
import { xmlText } from './xml-text.ts';

/** Atom wants a time of day where a release has a day only. */
const midnight = (day: string): string => `${day}T00:00:00Z`;

interface Released {
  set: Dataset;
  version: string;
  date: string;
  note: string | null;
}

function entry({ set, version, date, note }: Released): string {
  const people = set.creators.map(
    (person) => `    <author><name>${xmlText(person.name.full)}</name></author>\n`,
  );
  const summary = note === null ? set.description : `${note} ${set.description}`;
  return `  <entry>
    <id>${xmlText(`${set.dataPage}#version-${version}`)}</id>
    <title>${xmlText(`${set.title}, version ${version}`)}</title>
    <updated>${midnight(date)}</updated>
${people.join('')}    <link rel="alternate" type="text/html" href="${xmlText(set.page)}"/>
    <link rel="related" type="text/html" href="${xmlText(set.dataPage)}"/>
    <summary>${xmlText(summary)}</summary>
  </entry>
`;
}

const newestFirst = (a: Released, b: Released): number => {
  if (a.date !== b.date) return a.date < b.date ? 1 : -1;
  return `${a.set.id} ${a.version}` < `${b.set.id} ${b.version}` ? -1 : 1;
};

/** feed.xml: an Atom entry for each release of each dataset, the newest first. */
export function feed(library: Library): string {
  const { site } = library;
  const releases = library.trials
    .filter((item) => finished(item) !== null)
    .map((item) => dataset(item, library))
    .flatMap((set): Released[] =>
      set.releases.map(({ version, date, note }) => ({ set, version, date, note: note ?? null })),
    )
    .sort(newestFirst);
  const updated = releases[0]?.date ?? '1970-01-01';
  return `<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${xmlText(site.language ?? 'en')}">
  <id>${xmlText(siteAddress(site))}</id>
  <title>${xmlText(site.title)}</title>
${site.description === undefined ? '' : `  <subtitle>${xmlText(site.description)}</subtitle>\n`}  <updated>${midnight(updated)}</updated>
  <author><name>${xmlText(site.publisher)}</name></author>
  <link rel="self" type="application/atom+xml" href="${xmlText(address(site, 'feed.xml'))}"/>
  <link rel="alternate" type="text/html" href="${xmlText(siteAddress(site))}"/>
${releases.map(entry).join('')}</feed>
`;
}
