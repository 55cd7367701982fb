/** Where a weigh-in begins or goes on: those on the device, the site's trials, a folder of one's own. */
import { localDay } from '../local-day.ts';
import { formatDate } from '../../compute/format/format-date.ts';
import { say } from '../../model/say.ts';
import type { WeighTrial } from '../../model/weigh-trial.ts';
import { isDone, weighState } from '../../weigh/weigh-state.ts';
import type { OpenedTrial } from '../../weigh/open-trial.ts';
import { chosenFiles, droppedFiles, type PageFile } from '../check/page-files.ts';
import { button, make, part } from './dom.ts';
import type { KeptWeighing, Store } from './store.ts';

/** What the start needs of the page. */
export interface StartOptions {
  store: Store;
  /** The address before `<id>.json`. */
  trials: string;
  onOpen: (weighing: KeptWeighing, isNew: boolean) => void;
}

/** Opens a trial of the site: the weigh-in of it that is on the device already, or a new one. */
export async function openSiteTrial({ store, trials, onOpen }: StartOptions, id: string): Promise<void> {
  const known = (await store.weighings()).filter(
    ({ fromSite, opened }) => fromSite && opened.trial.id === id,
  );
  const last = known.at(-1);
  if (last !== undefined) return onOpen(last, false);
  const answer = await fetch(`${trials}${encodeURIComponent(id)}.json`).catch(() => null);
  if (answer?.ok !== true) {
    part('start-said').textContent = say(
      'This trial could not be fetched; is there a network? Once opened it needs none.',
    );
    return;
  }
  const trial = (await answer.json()) as WeighTrial;
  await begin({ store, onOpen }, { trial, given: [], remarks: [], files: null, readings: null }, true);
}

async function begin(
  { store, onOpen }: Pick<StartOptions, 'store' | 'onOpen'>,
  opened: OpenedTrial,
  fromSite: boolean,
): Promise<void> {
  // Asked for at the first weigh-in: a browser that is short of room then lets other sites go first.
  await navigator.storage?.persist?.().catch(() => false);
  onOpen(await store.begin({ opened, fromSite, begun: new Date().toISOString() }), true);
}

/** Makes the start's buttons and the whole page take what is chosen or dropped. */
export function listenToStart(options: StartOptions): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-trial]')) {
    link.addEventListener('click', (event) => {
      event.preventDefault();
      void openSiteTrial(options, link.dataset['trial'] ?? '');
    });
  }
  for (const id of ['folder', 'files']) {
    const input = part<HTMLInputElement>(id);
    part(`choose-${id}`).addEventListener('click', () => input.click());
    input.addEventListener('change', () => {
      const files = chosenFiles(input.files);
      input.value = '';
      if (files.length > 0) void take(options, Promise.resolve(files));
    });
  }
  const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  document.addEventListener('dragover', (event) => {
    if (holdsFiles(event)) event.preventDefault();
  });
  document.addEventListener('drop', (event) => {
    if (event.dataTransfer === null || !holdsFiles(event)) return;
    event.preventDefault();
    void take(options, droppedFiles(event.dataTransfer));
  });
}

async function take(options: StartOptions, gather: Promise<PageFile[]>): Promise<void> {
  const said = part('start-said');
  said.textContent = say('Reading …');
  const { openFolders } = await import('./folder.ts');
  const found = await gather.then(openFolders).catch((error: unknown) => String(error));
  if (typeof found === 'string' || found.length === 0) {
    said.textContent = say('No trial was found in it.');
    return;
  }
  const sound = found.flatMap(({ opened }) => opened ?? []);
  const faults = found.flatMap((each) => each.faults.map((fault) => `${each.name} ${fault}`.trim()));
  part('start-faults').replaceChildren(...faults.slice(0, 8).map((text) => make('li', { text })));
  said.textContent = faults.length === 0 ? '' : say('This must be mended before it can be weighed in from:');
  if (sound.length === 1 && faults.length === 0) return begin(options, sound[0]!, false);
  part('start-found').replaceChildren(
    ...sound.map((opened) => button(opened.trial.metadata.title, () => void begin(options, opened, false))),
  );
}

/** Lists the weigh-ins on the device, the last first. */
export async function showStart(options: StartOptions): Promise<void> {
  const { store, onOpen } = options;
  const weighings = (await store.weighings()).reverse();
  part('start-kept').hidden = weighings.length === 0;
  const items = await Promise.all(
    weighings.map(async (weighing) => {
      const { id, opened, begun } = weighing;
      const { title } = opened.trial.metadata;
      const state = weighState(opened, await store.journal(id));
      const done = state.places.filter((place) => isDone(state, place)).length;
      const words = say('Begun on {date}; {done} of {places} entered.', {
        date: formatDate(localDay(new Date(begun))),
        done,
        places: state.places.length,
      });
      const goOn = button(say('Go on'), () => onOpen(weighing, false), {
        'aria-label': say('Go on with {title}', { title }),
        'data-go-on': String(id),
      });
      const forget = button(say('Delete'), () => askToForget(options, id, title, forget), {
        'aria-label': say('Delete {title}', { title }),
      });
      return make(
        'li',
        {},
        make('h3', { text: title }),
        make('p', { text: words }),
        make('p', { class: 'choices' }, goOn, forget),
      );
    }),
  );
  part('start-list').replaceChildren(...items);
}

/** Asked a second time on the button itself: what is deleted is nowhere else. */
function askToForget(options: StartOptions, id: number, title: string, pressed: HTMLButtonElement): void {
  if (pressed.dataset['sure'] === undefined) {
    pressed.dataset['sure'] = '';
    pressed.textContent = say('Delete for good');
    pressed.setAttribute('aria-label', say('Delete {title} for good', { title }));
    return;
  }
  void options.store.forget(id).then(() => showStart(options));
}
