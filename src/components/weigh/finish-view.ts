/** What is still open, what the check says, and the ways out. */
import { say, sayCount } from '../../model/say.ts';
import { openPlaces } from '../../weigh/weigh-state.ts';
import { keepFile } from '../keep-file.ts';
import { make, part } from './dom.ts';
import type { Session } from './session.ts';
import { repeatabilityEvent } from './totals-view.ts';
import type { TrialEdits } from './take-out.ts';

type TakeOut = typeof import('./take-out.ts');
const load = (): Promise<TakeOut> => import('./take-out.ts');

/** Makes the buttons do their work. */
export function listenToFinish(current: () => Session | null, today: () => string): void {
  const on = (id: string, work: (session: Session, out: TakeOut) => void): void =>
    part(id).addEventListener('click', () => {
      const session = current();
      if (session !== null) void load().then((out) => work(session, out));
    });
  on('finish-left', (session) => {
    const { cut, date } = session.state();
    const places = openPlaces(session.state());
    session.enter({ kind: 'left', cut, date, places }, session.draft());
    void showFinish(session, today);
  });
  on('finish-repeatability', (session) => {
    const what = repeatabilityEvent(session);
    if (what === null) return;
    const date = session.state().date || today();
    session.enter({ kind: 'event', date, where: '', what }, session.draft());
    void showFinish(session, today);
  });
  on('take-csv', (session, out) => out.tableFiles(session).forEach(keep));
  on('take-zip', (session, out) => keep(out.zipFile(session, agreed(session, out, today), today())));
  on('take-journal', (session, out) => keep(out.journalFile(session)));
  on('take-share', (session, out) => {
    // Closing the sheet without sharing is no fault.
    navigator
      .share({ files: out.tableFiles(session), title: session.opened.trial.metadata.title })
      .catch(() => undefined);
  });
}

/** The edits of trial.yaml whose boxes are ticked. */
function agreed(session: Session, out: TakeOut, today: () => string): TrialEdits {
  const all = out.trialEdits(session.state(), today());
  const isTicked = (id: string): boolean => part<HTMLInputElement>(id).checked;
  return {
    cuts: isTicked('edit-cuts') ? all.cuts : null,
    totals: isTicked('edit-totals') ? all.totals : [],
    events: isTicked('edit-events') ? all.events : [],
    finish: isTicked('edit-status') && all.finish,
    release: isTicked('edit-status') ? all.release : null,
  };
}

/** Shows how far the weigh-in is, what trial.yaml could be told, and what the check finds. */
export async function showFinish(session: Session, today: () => string): Promise<void> {
  const state = session.state();
  const open = openPlaces(state).length;
  part('finish-open').textContent =
    open === 0
      ? say('Every place is entered.')
      : sayCount(open, '{count} place is not entered yet.', '{count} places are not entered yet.');
  part('finish-left').hidden = open === 0;
  part('finish-repeatability').hidden = repeatabilityEvent(session) === null;
  const said = part('finish-check');
  said.textContent = say('Checking …');
  part('finish-problems').replaceChildren();
  const out = await load();
  const edits = out.trialEdits(state, today());
  const offered = {
    cuts: edits.cuts !== null,
    totals: edits.totals.length > 0,
    events: edits.events.length > 0,
    status: edits.finish,
  };
  for (const [name, is] of Object.entries(offered)) part(`edit-${name}-choice`).hidden = !is;
  const isAnything = Object.values(offered).some(Boolean);
  part('edits').hidden = !isAnything;
  part('take-zip').textContent =
    session.opened.files === null ? say('The tables and these lines as a zip') : say('The folder as a zip');
  part('edits-folder').hidden = session.opened.files === null;
  part('edits-site').hidden = session.opened.files !== null;
  part('edits-lines').textContent = out.editLines(edits).join('\n');
  const problems = out.problemsOf(session, today());
  said.textContent =
    problems.length === 0
      ? say('The check finds nothing to mend.')
      : out.hasError(problems)
        ? say('The check finds something to mend before the trial can be called finished:')
        : say('The check lets it pass, and asks:');
  // Alike ones are said once.
  const alike = Map.groupBy(problems, ({ file, message }) => `${file}: ${message}`);
  const lines = [...alike].map(([text, all]) =>
    all.length === 1 ? text : say('{problem} ({count} times)', { problem: text, count: all.length }),
  );
  part('finish-problems').replaceChildren(
    ...lines.slice(0, mostShown).map((text) => make('li', { text })),
    ...(lines.length > mostShown
      ? [make('li', { text: say('and {count} more', { count: lines.length - mostShown }) })]
      : []),
  );
  const files = out.tableFiles(session);
  part('take-share').hidden = !(typeof navigator.canShare === 'function' && navigator.canShare({ files }));
}

const mostShown = 12;

const keep = (file: File): void => {
  keepFile(file.name, file);
};
