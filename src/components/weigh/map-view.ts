/** The container's map: a button for each pot, turned as the harvester stands. */
import { orientationOf } from '../../draw/orientation.ts';
import { say } from '../../model/say.ts';
import type { Container } from '../../model/trial.ts';
import { isDone, recordAt, endedBefore, type WeighState } from '../../weigh/weigh-state.ts';
import type { Place } from '../../weigh/place.ts';
import { make, part } from './dom.ts';
import { statusWords } from './words.ts';

export interface MapView {
  /** Shows the place's container and marks the place. */
  show(state: WeighState, place: Place): void;
  /** Draws all anew when next shown. */
  forget(): void;
}

/** @param onChoose is given the place whose pot was tapped */
export function mapView(onChoose: (place: Place) => void): MapView {
  const region = part('weigh-map');
  let shown = '';
  let cells = new Map<string, HTMLButtonElement>();
  let places = new Map<string, Place[]>();
  let current = '';
  let last: WeighState | null = null;

  const choose = (key: string): void => {
    const inPot = places.get(key) ?? [];
    const place = inPot.find((each) => last !== null && !isDone(last, each)) ?? inPot[0];
    if (place !== undefined) onChoose(place);
  };

  const build = (state: WeighState, container: Container): void => {
    const { columnsReversed, top, left, right } = orientationOf(container);
    const columns = Array.from({ length: container.columns }, (_, index) =>
      columnsReversed ? container.columns - index : index + 1,
    );
    const own = state.places.filter((place) => place.container === container.id);
    places = Map.groupBy(own, ({ row, column }) => `${String(row)} ${String(column)}`);
    cells = new Map();
    const cell = (row: number, column: number): HTMLElement => {
      const key = `${String(row)} ${String(column)}`;
      if (!places.has(key)) return make('td', {}, make('span', { class: 'unplanted', text: '' }));
      const pot = make('button', { attributes: { type: 'button' }, onClick: () => choose(key) });
      cells.set(key, pot);
      return make('td', {}, pot);
    };
    const head = make(
      'thead',
      {},
      make('tr', {}, make('td'), ...columns.map((column) => heading(String(column), 'col'))),
    );
    const rows = Array.from({ length: container.rows }, (_, index) =>
      make('tr', {}, heading(String(index + 1), 'row'), ...columns.map((column) => cell(index + 1, column))),
    );
    const table = make(
      'table',
      {},
      make('caption', { class: 'unseen', text: say('Map of {container}', { container: container.id }) }),
      head,
      make('tbody', {}, ...rows),
    );
    const landmarks = [
      left === null ? '' : `◂ ${left}`,
      top === null ? '' : `▴ ${top}`,
      right === null ? '' : `${right} ▸`,
    ];
    part('weigh-landmarks').replaceChildren(...landmarks.map((text) => make('span', { text })));
    region.replaceChildren(table);
    for (const key of cells.keys()) fill(state, key);
  };

  const fill = (state: WeighState, key: string): void => {
    const pot = cells.get(key);
    const inPot = places.get(key) ?? [];
    if (pot === undefined) return;
    const texts = inPot.map((place) => shortOf(state, place));
    const done = texts.filter((text) => text !== '').length;
    const [row, column] = key.split(' ');
    const long = done === 0 ? say('open') : texts.filter(Boolean).join(', ');
    pot.textContent = inPot.length === 1 ? (texts[0] ?? '') : `${String(done)}/${String(inPot.length)}`;
    pot.setAttribute(
      'aria-label',
      say('row {row}, column {column}: {what}', { row: row!, column: column!, what: long }),
    );
    pot.classList.toggle('done', done === inPot.length);
    pot.classList.toggle('with-words', /\p{L}/u.test(pot.textContent));
  };

  return {
    forget: () => (shown = ''),
    show: (state, place) => {
      last = state;
      const key = `${String(place.row)} ${String(place.column)}`;
      const container = state.trial.metadata.containers.find(({ id }) => id === place.container);
      if (container === undefined) return;
      const form = `${place.container}|${String(state.cut)}|${String(state.walk.whole)}`;
      if (form !== shown) build(state, container);
      else for (const each of new Set([current, key])) fill(state, each);
      cells.get(current)?.removeAttribute('aria-current');
      const pot = cells.get(key);
      pot?.setAttribute('aria-current', 'true');
      [shown, current] = [form, key];
      if (pot !== undefined) centre(region, pot);
    },
  };
}

function heading(text: string, scope: string): HTMLElement {
  return make('th', { text, attributes: { scope } });
}

/** Scrolls the map alone, never the page under the hand. */
function centre(region: HTMLElement, pot: HTMLElement): void {
  const [outer, inner] = [region.getBoundingClientRect(), pot.getBoundingClientRect()];
  region.scrollTop += inner.top + inner.height / 2 - (outer.top + outer.height / 2);
  region.scrollLeft += inner.left + inner.width / 2 - (outer.left + outer.width / 2);
}

/** What stands in a pot's cell: its weight, or what became of it; empty while it is open. */
function shortOf(state: WeighState, place: Place): string {
  const record = recordAt(state, place) ?? endedBefore(state, place);
  if (record === null) return '';
  if (record.status !== 'weighed') return statusWords(record.status);
  return record.values[state.trial.metadata.variables[0]?.id ?? ''] ?? '';
}
