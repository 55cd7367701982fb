/** Readings of the solution, and events. */
import { unlikelyReading } from '../../check/rules/reading-unlikely.ts';
import { formatDate } from '../../compute/format/format-date.ts';
import { say } from '../../model/say.ts';
import { make, part } from './dom.ts';
import type { Session } from './session.ts';
import { shortNumber } from './words.ts';

/** The form fields of a reading: the columns of readings.csv. */
const columns = ['level', 'added', 'ec', 'ph', 'temperature', 'rain', 'overflow'] as const;

const field = (id: string): HTMLInputElement => part<HTMLInputElement>(id);

/** Makes both forms keep what is filled in. */
export function listenToNotes(current: () => Session | null, today: () => string): void {
  let asked = '';
  part('reading-form').addEventListener('submit', (event) => {
    event.preventDefault();
    const session = current();
    if (session === null) return;
    const values = Object.fromEntries(
      columns.map((name) => [name, field(`reading-${name}`).value.trim().replace(',', '.')]),
    );
    const remark = field('reading-remark').value.trim();
    const fault = faultOf(values, remark);
    const doubt = fault ?? doubtOf(values);
    // What is merely unlikely is asked once.
    const isAsked = fault === null && asked === JSON.stringify(values);
    if (doubt !== null && !isAsked) {
      asked = JSON.stringify(values);
      part('reading-said').textContent = doubt;
      return;
    }
    const [container, date] = [field('reading-container').value, field('reading-date').value || today()];
    session.enter({ kind: 'reading', container, date, values, remark }, session.draft());
    for (const name of [...columns, 'remark']) field(`reading-${name}`).value = '';
    part('reading-said').textContent = say('Kept.');
    showNotes(session, today);
  });
  part('event-form').addEventListener('submit', (event) => {
    event.preventDefault();
    const session = current();
    const what = field('event-what').value.trim();
    if (session === null) return;
    if (what === '') {
      part('event-said').textContent = say('Say in a few words what happened.');
      return;
    }
    const [date, where] = [field('event-date').value || today(), field('event-where').value.trim()];
    session.enter({ kind: 'event', date, where, what }, session.draft());
    field('event-what').value = '';
    part('event-said').textContent = say('Kept.');
    showNotes(session, today);
  });
}

function faultOf(values: Readonly<Record<string, string>>, remark: string): string | null {
  for (const [name, text] of Object.entries(values)) {
    const form = name === 'temperature' ? /^-?\d+(\.\d+)?$/ : /^\d+(\.\d+)?$/;
    if (text !== '' && !form.test(text))
      return say('“{text}” is not a number: digits only, such as 6.2.', { text: text.slice(0, 30) });
  }
  const isNothing = remark === '' && Object.values(values).every((text) => text === '');
  return isNothing ? say('Nothing is filled in yet.') : null;
}

function doubtOf(values: Readonly<Record<string, string>>): string | null {
  const doubts = Object.entries(values).flatMap(([name, text]) => {
    const doubt = text === '' ? null : unlikelyReading(name, Number(text));
    if (doubt === null) return [];
    const { lowest, highest } = doubt;
    return say(
      '{value} lies outside {lowest} to {highest}, where such readings lie. To keep it, keep it once more.',
      {
        value: shortNumber(Number(text)),
        lowest: shortNumber(lowest),
        highest: shortNumber(highest),
      },
    );
  });
  return doubts[0] ?? null;
}

/** Fills the list of containers and shows what was noted in this weigh-in. */
export function showNotes(session: Session, today: () => string): void {
  const state = session.state();
  const containers = part<HTMLSelectElement>('reading-container');
  const ids = state.trial.metadata.containers.map(({ id }) => id);
  if (containers.options.length !== ids.length)
    containers.replaceChildren(...ids.map((id) => make('option', { text: id, attributes: { value: id } })));
  for (const id of ['reading-date', 'event-date']) if (field(id).value === '') field(id).value = today();
  const readings = state.readings.map(({ container, date, values, remark }) => {
    const said = columns.flatMap((name) => (values[name] ? [`${labelOf(name)} ${values[name]}`] : []));
    return [formatDate(date), container, ...said, ...(remark === '' ? [] : [remark])].join(' · ');
  });
  const events = state.events.map(({ date, where, what }) =>
    [formatDate(date), ...(where === '' ? [] : [where]), what].join(' · '),
  );
  part('reading-list').replaceChildren(...readings.map((text) => make('li', { text })));
  part('event-list').replaceChildren(...events.map((text) => make('li', { text })));
}

/** The label that the page gives a column. */
const labelOf = (name: string): string => part(`reading-${name}`).closest('label')?.dataset['name'] ?? name;
