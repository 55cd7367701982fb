/** Entering one plant after the other: map, keys, statuses, remarks, and what is asked. */
import { say } from '../../model/say.ts';
import type { Status } from '../../model/trial.ts';
import { firstSurprise } from '../../weigh/first-surprise.ts';
import { placeKey, type Place } from '../../weigh/place.ts';
import { typedValue, typeKey } from '../../weigh/type-key.ts';
import { isOffItsScale, valueForms, type ValueForm } from '../../weigh/value-form.ts';
import { isDone, nextOpen, recordAt } from '../../weigh/weigh-state.ts';
import { askPanel } from './ask-panel.ts';
import { button, part } from './dom.ts';
import { fieldsView } from './fields-view.ts';
import { mapView } from './map-view.ts';
import { remarkStrip } from './remark-strip.ts';
import { emptyDraft, knownDraft, type Session } from './session.ts';
import type { Draft } from './store.ts';
import { offItsScaleWords, placeWords, statusWords } from './words.ts';

export interface WeighingView {
  /** Shows the session where it stands. */
  show(session: Session): void;
  /** A key of a keyboard: true where it was taken. */
  key(key: string): boolean;
}

/** @param onDone is called when no place is left open */
export function weighingView(onDone: () => void): WeighingView {
  let session: Session;
  let forms: readonly ValueForm[] = [];
  let place: Place;
  let draft: Draft;
  /** True where the next digit begins a value anew. */
  let isFresh = false;
  /** What was asked about the place, so that it is asked once: variable and value. */
  let asked = new Set<string>();
  const [keys, next] = [part('weigh-keys'), part('weigh-next')];
  const map = mapView((chosen) => goTo(chosen));
  const ask = askPanel((isKept) => {
    if (isKept) goOn();
  });
  const fields = fieldsView(
    (index) => {
      isFresh = true;
      change({ field: index });
    },
    (mark) => {
      change({ values: { ...draft.values, [forms[draft.field]!.id]: mark } });
      goOn();
    },
  );
  const remarks = remarkStrip((remark) => {
    change({ remark });
    next.focus({ preventScroll: true });
  });

  function show(shown: Session): void {
    session = shown;
    const state = session.state();
    forms = valueForms(state.trial.metadata);
    const kept = session.draft();
    const from = (kept.cut === state.cut ? kept.place : null) ?? nextOpen(state, null) ?? state.places[0];
    if (from === undefined) return;
    const isKept = kept.place !== null && placeKey(kept.place, kept.cut) === placeKey(from, state.cut);
    stand(from, isKept ? kept : knownDraft(session.state(), from));
    buildKeys();
    fields.forget();
    map.forget();
    render();
  }

  /** Stands at a place, nothing asked of it yet. */
  function stand(at: Place, typed: Draft): void {
    [place, draft, asked] = [at, typed, new Set()];
    isFresh = recordAt(session.state(), at) !== null;
  }

  function goTo(chosen: Place): void {
    stand(chosen, knownDraft(session.state(), chosen));
    session.type(draft);
    render();
    next.focus({ preventScroll: true });
  }

  function change(to: Partial<Draft>): void {
    draft = { ...draft, place, ...to };
    session.type(draft);
    fields.show(forms, draft);
    remarks.show(draft.remark);
  }

  function type(key: string): void {
    const form = forms[draft.field];
    if (form === undefined) return;
    const before = isFresh && key !== 'back' ? '' : (draft.values[form.id] ?? '');
    isFresh = false;
    change({ values: { ...draft.values, [form.id]: typeKey(before, key, form) } });
    ask.hide();
  }

  /** Next variable, or next plant: what the large key does. */
  function goOn(): void {
    const values = Object.fromEntries(
      forms.map((form) => [form.id, typedValue(draft.values[form.id] ?? '', form)]),
    );
    if (forms.every(({ id }) => values[id] === '')) return pass();
    if (values[forms[0]!.id] === '') return note(say('Type its weight, or tap what became of it.'));
    if (isWrong(values) || isAsking(values)) return;
    if (draft.field === forms.length - 1) return enter('weighed', values);
    isFresh = true;
    change({ field: draft.field + 1 });
  }

  /** Leads back to a mark that its scale does not have, which no check would pass. */
  function isWrong(values: Readonly<Record<string, string>>): boolean {
    const { metadata } = session.state().trial;
    const at = metadata.variables.findIndex((each) => isOffItsScale(metadata, each, values[each.id] ?? ''));
    if (at < 0) return false;
    isFresh = true;
    change({ field: at });
    note(offItsScaleWords(values[forms[at]!.id]!, forms[at]!));
    return true;
  }

  /** Asks about the first value that surprises, once. */
  function isAsking(values: Readonly<Record<string, string>>): boolean {
    const found = firstSurprise(session.state(), place, values, asked);
    if (found === null) return false;
    asked.add(found.key);
    change({ field: found.index });
    // Digits that follow are the right ones; a digit taken away mends what stands there.
    isFresh = true;
    ask.show(found.asks, found.text, forms[found.index]!.unit);
    return true;
  }

  function enter(status: Status, values: Readonly<Record<string, string>>): void {
    const state = session.state();
    const known = [...(recordAt(state, place)?.kept ?? []), ...asked];
    const kept = forms.map(({ id }) => `${id} ${values[id] ?? ''}`).filter((each) => known.includes(each));
    const { cut, date } = state;
    const here = placeKey(place, cut);
    // After a correction, to the first place that is still open.
    const following = nextOpen(state, isDone(state, place) ? null : place);
    const open = following === null || placeKey(following, cut) === here ? null : following;
    session.enter(
      { kind: 'weighed', place, cut, date, status, values, remark: draft.remark, kept },
      open === null ? emptyDraft(cut) : knownDraft(state, open),
    );
    if (open === null) {
      map.show(session.state(), place);
      return onDone();
    }
    const before = place.container;
    stand(open, knownDraft(state, open));
    render();
    // On the status, Enter after the next weight would say the same of that plant.
    next.focus({ preventScroll: true });
    if (open.container !== before)
      note(
        say('On to {container}. The crate of {before} can be weighed apart: see totals.', {
          container: open.container,
          before,
        }),
      );
  }

  /** Nothing typed: the place stays open, and its turn comes again. */
  function pass(): void {
    const open = nextOpen(session.state(), place);
    if (open === null) onDone();
    else goTo(open);
  }

  function note(text: string): void {
    part('weigh-note').textContent = text;
  }

  function render(): void {
    const state = session.state();
    const inPot = ({ container, row, column }: Place): boolean =>
      container === place.container && row === place.row && column === place.column;
    part('weigh-where').textContent = placeWords(place, state.places.filter(inPot).length);
    const done = state.places.filter((each) => isDone(state, each)).length;
    part('weigh-count').textContent = say('{done} of {places}', { done, places: state.places.length });
    const record = recordAt(state, place);
    note(
      record === null
        ? ''
        : say('Entered: {status}. What you enter now takes its place.', {
            status: statusWords(record.status),
          }),
    );
    ask.hide();
    map.show(state, place);
    fields.show(forms, draft);
    remarks.show(draft.remark);
  }

  function buildKeys(): void {
    const { cut } = session.state();
    const offered: readonly Status[] = ['dead', 'no regrowth', 'culled', 'not weighed', 'not planted'];
    part('weigh-statuses').replaceChildren(
      ...offered
        .filter((status) => status !== 'no regrowth' || cut > 1)
        .map((status) => button(statusWords(status), () => enter(status, {}), { 'data-status': status })),
    );
    const decimal = keys.querySelector<HTMLElement>('[data-key="."]')!;
    decimal.textContent = forms[0]?.mark ?? '.';
    decimal.hidden = forms.every(({ decimals }) => decimals === 0);
  }

  // A tap leaves the keyboard where it is: Enter goes on to the next plant, whatever was tapped before.
  part('view-weighing').addEventListener('mousedown', (event) => {
    if (event.target instanceof Element && event.target.closest('button') !== null) event.preventDefault();
  });
  keys.addEventListener('click', ({ target }) => {
    const pressed = target instanceof Element ? target.closest<HTMLElement>('[data-key]') : null;
    if (pressed?.dataset['key'] !== undefined) type(pressed.dataset['key']);
  });
  next.addEventListener('click', () => goOn());
  part('weigh-undo').addEventListener('click', () => {
    const taken = session.undo();
    if (taken === null) return note(say('There is nothing to take back.'));
    show(session);
    isFresh = true;
    note(say('Taken back.'));
  });

  function step(by: number): void {
    const { places, cut } = session.state();
    const at = places.findIndex((each) => placeKey(each, cut) === placeKey(place, cut));
    const to = places[at + by];
    if (to !== undefined) goTo(to);
  }

  return {
    show,
    key: (key) => {
      if (/^[\d.,]$/.test(key)) type(key);
      else if (key === 'Backspace') type('back');
      else if (key === 'Enter') goOn();
      else if (key === 'ArrowLeft' || key === 'ArrowRight') step(key === 'ArrowLeft' ? -1 : 1);
      else return false;
      return true;
    },
  };
}
