/** The page for weighing in: its views, its keyboard, and what it keeps on the device. */
import { say } from '../../model/say.ts';
import { part } from './dom.ts';
import { listenToFinish, showFinish } from './finish-view.ts';
import { listenToNotes, showNotes } from './notes-view.ts';
import { openSession, type Session } from './session.ts';
import { listenToSetUp, showSetUp } from './set-up-view.ts';
import { today } from '../local-day.ts';
import { listenToStart, openSiteTrial, showStart, type StartOptions } from './start-view.ts';
import { openStore, type KeptWeighing, type Store } from './store.ts';
import { showTotals, showTwice } from './totals-view.ts';
import { weighingView } from './weighing-view.ts';

const views = ['start', 'set-up', 'weighing', 'totals', 'twice', 'notes', 'finish'] as const;
type View = (typeof views)[number];

const { site = '', trials = '', worker = '' } = part('weigh').dataset;
let session: Session | null = null;

if (document.documentElement.lang.startsWith('es')) await import('../../model/messages.ts');
const weighing = weighingView(() => show('finish'));

function show(view: View): void {
  for (const each of views) part(`view-${each}`).hidden = each !== view;
  part('weigh-menu').hidden = true;
  part('weigh-bar').hidden = view === 'start' || view === 'set-up';
  part('weigh-title').hidden = view === 'weighing';
  part('weigh-place').hidden = view !== 'weighing';
  // At the tank the screen belongs to the keys.
  document.documentElement.classList.toggle('weighing-now', view !== 'start');
  if (session === null) return;
  if (view === 'set-up') showSetUp(session, today);
  else if (view === 'weighing') {
    weighing.show(session);
    part('weigh-next').focus({ preventScroll: true });
  } else if (view === 'totals') showTotals(session);
  else if (view === 'twice') showTwice(session);
  else if (view === 'notes') showNotes(session, today);
  else if (view === 'finish') void showFinish(session, today);
  if (view !== 'weighing') part(`view-${view}`).querySelector<HTMLElement>('h2')?.focus();
  scrollTo(0, 0);
}

async function open(store: Store, kept: KeptWeighing, isNew: boolean): Promise<void> {
  const onFault = (reason: string): void => {
    const box = part('weigh-fault');
    box.hidden = false;
    box.textContent = say(
      'The last entry could not be kept on this device ({reason}). Write it on paper, and take out what there is.',
      { reason },
    );
  };
  session?.close();
  const again = (): void => void open(store, kept, false);
  session = await openSession(store, kept, onFault, again);
  part('weigh-title').textContent = kept.opened.trial.metadata.title;
  history.replaceState(null, '', `${location.pathname}#${String(kept.id)}`);
  const isSetUp = session.journal().some(({ entry }) => entry.kind === 'cut');
  show(isNew || !isSetUp ? 'set-up' : 'weighing');
}

async function run(): Promise<void> {
  const store = await openStore(site).catch(() => null);
  if (store === null) {
    part('start-said').textContent = say(
      'This browser keeps nothing on the device, as in a private window, so nothing can be weighed in here.',
    );
    return;
  }
  const options: StartOptions = {
    store,
    trials,
    onOpen: (kept, isNew) => void open(store, kept, isNew),
  };
  listenToStart(options);
  listenToSetUp(
    () => session,
    () => show('weighing'),
  );
  listenToNotes(() => session, today);
  listenToFinish(() => session, today);
  part('weigh-more').addEventListener('click', () => {
    const menu = part('weigh-menu');
    menu.hidden = !menu.hidden;
    part('weigh-more').setAttribute('aria-expanded', String(!menu.hidden));
  });
  for (const each of document.querySelectorAll<HTMLElement>('[data-view]')) {
    each.addEventListener('click', () => {
      const view = each.dataset['view'] as View;
      if (view === 'start') void leave(options);
      else show(view);
    });
  }
  document.addEventListener('keydown', onKey);
  part('view-start').hidden = false;
  part('start-open').hidden = false;
  const wanted = new URLSearchParams(location.search).get('trial');
  const number = Number(location.hash.slice(1));
  const kept = number > 0 ? (await store.weighings()).find(({ id }) => id === number) : undefined;
  if (kept !== undefined) await open(store, kept, false);
  else {
    await showStart(options);
    if (wanted !== null) await openSiteTrial(options, wanted);
  }
  part('weigh').dataset['ready'] = '';
}

async function leave(options: StartOptions): Promise<void> {
  await session?.written();
  session?.close();
  session = null;
  history.replaceState(null, '', location.pathname);
  show('start');
  await showStart(options);
}

function onKey(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || part('view-weighing').hidden) return;
  const { target } = event;
  const isElsewhere =
    target instanceof HTMLInputElement || (target instanceof HTMLButtonElement && event.key === 'Enter');
  if (!isElsewhere && weighing.key(event.key)) event.preventDefault();
}

/** Lets the browser keep the page itself, so that it opens without a network. */
async function keepPage(): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const found = await navigator.serviceWorker
    .register(worker, { updateViaCache: 'none' })
    .then(() => navigator.serviceWorker.ready)
    .catch(() => null);
  if (found !== null) part('weigh-offline').hidden = false;
}

await run();
await keepPage();
