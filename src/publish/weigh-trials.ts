import type { Library } from '../model/library.ts';
import { publishedMetadata } from '../model/published-metadata.ts';
import type { Trial, TrialMetadata } from '../model/trial.ts';
import type { WeighTrial } from '../model/weigh-trial.ts';
import type { PublishedFile } from './published-file.ts';
import { say } from '../model/say.ts';
import { jsonFile, textFile } from './published-file.ts';

/** What depends on files or weights that a page does not have when it opens a trial of the site. */
const left: ReadonlySet<string> = new Set([
  'photos',
  'accepted',
  'summary',
  'related',
  'nutrients',
  'events',
]);

/** A trial of the site, to be weighed in anew: without photographs, totals and what was accepted of its weights. */
export function weighTrialOf({ id, metadata, positions }: Trial): WeighTrial {
  const kept = Object.entries(publishedMetadata(metadata)).filter(([name]) => !left.has(name));
  const containers = metadata.containers.map((container) => {
    const own = { ...container };
    delete own.weighed_total;
    return own;
  });
  return { id, metadata: { ...Object.fromEntries(kept), containers } as TrialMetadata, positions };
}

/** The address of a trial as it is opened for weighing, from the site's root on. */
export function weighTrialPath(id: string): string {
  return `weigh/${id}.json`;
}

/** What lets a device keep the page for weighing in like a program of its own (W3C Web Application Manifest). */
function appManifest({ site }: Library): PublishedFile {
  const manifest = {
    name: `${say('Weighing in')} · ${site.title}`,
    short_name: say('Weighing in'),
    lang: site.language ?? 'en',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#fbfaf6',
    theme_color: '#0a5361',
    icons: [
      { src: '../icon.svg', type: 'image/svg+xml', sizes: 'any', purpose: 'any' },
      { src: '../icon-192.png', type: 'image/png', sizes: '192x192', purpose: 'any' },
      { src: '../icon-512.png', type: 'image/png', sizes: '512x512', purpose: 'any' },
      // For devices that cut it round.
      { src: '../icon-round-512.png', type: 'image/png', sizes: '512x512', purpose: 'maskable' },
    ],
  };
  return jsonFile(
    'weigh/app.webmanifest',
    'application/manifest+json',
    'The page for weighing in, as a program.',
    manifest,
  );
}

/** Every trial of the site as it is opened for weighing: no weight is in it. */
export function weighTrials(library: Library): PublishedFile[] {
  const trials = library.trials.map(({ trial }) =>
    textFile(
      weighTrialPath(trial.id),
      'application/json',
      `The containers and positions of ${trial.metadata.title}, for weighing in.`,
      `${JSON.stringify(weighTrialOf(trial))}\n`,
    ),
  );
  return [appManifest(library), ...trials];
}
