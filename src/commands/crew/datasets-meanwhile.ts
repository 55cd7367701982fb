/** The datasets are made and written by the crew while the pages are rendered in this thread. */
import type { AstroIntegration } from 'astro';
import { languageOf } from '../../model/language.ts';
import type { Library } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import { provideDatasetFacts } from '../../publish/files.ts';
import { progressOf } from '../progress.ts';
import { type Crew, shareOut } from './crew.ts';

/**
 * Has the crew write the datasets below the output folder, from when Astro has emptied it on. A page that tells of
 * a dataset's files waits for them, and comes after those that tell of none. Nothing is done where the crew is empty.
 */
export function datasetsMeanwhile(crew: Crew, library: Library, output: string): AstroIntegration {
  const datasets = writing(crew, library, output);
  return {
    name: 'tankside-datasets-meanwhile',
    hooks: {
      'astro:build:setup': datasets.start,
      'astro:build:start': ({ setPrerenderer }) => {
        setPrerenderer((pages) => ({
          ...pages,
          getStaticPaths: async () => {
            const paths = await pages.getStaticPaths();
            return paths
              .map((path) => ({ path, place: datasets.place(path.pathname) }))
              .sort((a, b) => a.place - b.place)
              .map(({ path }) => path);
          },
          render: async (request, options) => {
            await datasets.neededFor(new URL(request.url).pathname);
            return await pages.render(request, options);
          },
        }));
      },
      'astro:build:generated': datasets.all,
    },
  };
}

function writing(crew: Crew, library: Library, output: string) {
  const hands = crew.hands('writeDataset');
  const items = library.trials.filter(({ findings }) => findings !== null);
  const places = new Map(items.map(({ trial }, index) => [trial.id, index]));
  const written = items.map(() => Promise.withResolvers<null>());
  let whole: Promise<unknown> | null = null;

  const telling = hands.map((hand) => async (index: number) => {
    const { site } = library;
    const item = items[index]!;
    provideDatasetFacts(item, await hand({ item, site, language: languageOf(site.language), output }));
    written[index]!.resolve(null);
  });
  const start = () => {
    if (hands.length === 0 || whole !== null) return;
    whole = shareOut(
      [...items.keys()],
      telling,
      progressOf(() => say('Publishing')),
    );
    // A failure is met by whoever waits next, and is not one that nobody caught until then.
    whole.catch(() => null);
  };
  const all = async () => {
    await whole;
  };
  /** The place of the trial that a page is of, if it is of one. */
  const placeOf = (path: string) =>
    path
      .split('/')
      .map((part) => places.get(part))
      .find((place) => place !== undefined);
  const isAcrossDatasets = (path: string) => /(^|\/)data\/?$/.test(path);
  return {
    start,
    all,
    /** Where a page comes among all: in the order in which the datasets are written. */
    place: (path: string) => (isAcrossDatasets(path) ? items.length : (placeOf(path) ?? -1)),
    /** Waits for the datasets that a page tells of. */
    neededFor: async (path: string) => {
      const place = placeOf(path);
      if (isAcrossDatasets(path)) await whole;
      else if (whole !== null && place !== undefined) await Promise.race([written[place]!.promise, whole]);
    },
  };
}
