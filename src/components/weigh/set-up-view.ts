/** Which cut is weighed, on which day, and how the containers are walked. */
import { primaryOf } from '../../weigh/weigh-trial.ts';
import { part } from './dom.ts';
import type { Session } from './session.ts';

const field = (id: string): HTMLInputElement => part<HTMLInputElement>(id);

/** Shows what is set. */
export function showSetUp(session: Session, today: () => string): void {
  const { trial, cut, date, walk } = session.state();
  field('set-cut').value = String(cut);
  field('set-date').value = date === '' ? today() : date;
  field('set-order-rows').checked = !walk.boustrophedon;
  field('set-order-back').checked = walk.boustrophedon;
  field('set-whole').checked = walk.whole;
  const isChoice = primaryOf(trial).of === 'plant' && trial.positions.some(({ plants }) => plants > 1);
  part('set-whole-choice').hidden = !isChoice;
}

/** @param onSet is called once it is set */
export function listenToSetUp(current: () => Session | null, onSet: () => void): void {
  part('set-up-form').addEventListener('submit', (event) => {
    event.preventDefault();
    const session = current();
    if (session === null) return;
    const cut = Math.max(1, Math.floor(Number(field('set-cut').value) || 1));
    const walk = { boustrophedon: field('set-order-back').checked, whole: field('set-whole').checked };
    session.enter({ kind: 'walk', ...walk }, session.draft());
    session.enter({ kind: 'cut', cut, date: field('set-date').value }, session.draft());
    onSet();
  });
  // A cut that trial.yaml gives a day is mostly weighed on that day.
  field('set-cut').addEventListener('change', () => {
    const day = current()?.state().trial.metadata.dates?.cuts?.[Number(field('set-cut').value) - 1];
    if (day !== undefined) field('set-date').value = day;
  });
}
