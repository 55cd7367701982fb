/** Entering one plant after the other: map, keys, statuses, remarks, and what is asked. */
import { say } from '../../model/say.ts';
import type { Status, Variable } from '../../model/trial.ts';
import { asksOf } from '../../weigh/asks.ts';
import { placeKey, type Place } from '../../weigh/place.ts';
import { typedValue, typeKey } from '../../weigh/type-key.ts';
import { valueForms, type ValueForm } from '../../weigh/value-form.ts';
import { isDone, nextOpen, recordAt } from '../../weigh/weigh-state.ts';
import { button, make, part } from './dom.ts';
import { mapView } from './map-view.ts';
import { remarkStrip } from './remark-strip.ts';
import { emptyDraft, type Session } from './session.ts';
import type { Draft } from './store.ts';
import { askWords, placeWords, statusWords } from './words.ts';

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
  const map = mapView((chosen) => goTo(chosen));
  const remarks = remarkStrip((remark) => {
    draft = { ...draft, place, remark };
    session.type(draft);
    next.focus({ preventScroll: true });
  });
  const [ask, keys, next] = [part('weigh-ask'), part('weigh-keys'), part('weigh-next')];

  const plantsAt = ({ container, row, column }: Place): number =>
    session
      .state()
      .trial.positions.find(
        (each) => each.container === container && each.row === row && each.column === column,
      )?.plants ?? 1;

  function show(shown: Session): void {
    session = shown;
    const state = session.state();
    forms = valueForms(state.trial.metadata);
    const kept = session.draft();
    const first = kept.cut === state.cut && kept.place !== null ? kept.place : nextOpen(state, null);
    const from = first ?? state.places[0];
    if (from === undefined) return;
    const isKept = kept.place !== null && placeKey(kept.place, kept.cut) === placeKey(from, state.cut);
    place = from;
    draft = isKept ? kept : draftOf(from);
    isFresh = false;
    asked = new Set();
    buildStatuses();
    buildKeys();
    map.forget();
    render();
  }

  /** What is known of a place, to be changed. */
  function draftOf(at: Place): Draft {
    const state = session.state();
    const record = recordAt(state, at);
    const remark = record?.remark ?? state.remarks.get(placeKey(at, state.cut)) ?? '';
    return { ...emptyDraft(state.cut), place: at, values: record?.values ?? {}, remark };
  }

  function goTo(chosen: Place): void {
    place = chosen;
    draft = draftOf(chosen);
    isFresh = true;
    asked = new Set();
    session.type(draft);
    render();
  }

  function type(key: string): void {
    const form = forms[draft.field];
    if (form === undefined) return;
    const before = isFresh && key !== 'back' ? '' : (draft.values[form.id] ?? '');
    isFresh = false;
    draft = { ...draft, place, values: { ...draft.values, [form.id]: typeKey(before, key, form) } };
    session.type(draft);
    renderFields();
    showAsk(false);
  }

  /** Next variable, or next plant: what the large key does. */
  function goOn(): void {
    const { metadata } = session.state().trial;
    const values = Object.fromEntries(
      forms.map((form) => [form.id, typedValue(draft.values[form.id] ?? '', form)]),
    );
    if (forms.every(({ id }) => values[id] === '')) return pass();
    if (values[forms[0]!.id] === '') return note(say('Type its weight, or tap what became of it.'));
    const variable = metadata.variables[draft.field]!;
    const question = questionsAbout(variable, values[variable.id]!);
    if (question !== null) return question;
    if (draft.field < forms.length - 1) {
      draft = { ...draft, field: draft.field + 1 };
      isFresh = true;
      session.type(draft);
      return renderFields();
    }
    enter('weighed', values);
  }

  /** Asks about a value, once; null where nothing is to be asked any more. */
  function questionsAbout(variable: Variable, text: string): null | undefined {
    const form = forms[draft.field]!;
    const key = `${variable.id} ${text}`;
    const record = recordAt(session.state(), place);
    if (text === '' || asked.has(key) || record?.kept.includes(key) === true) return null;
    const asks = asksOf(session.state(), place, variable, text);
    if (asks.length === 0) return null;
    asked.add(key);
    // Digits that follow are the right ones; a digit taken away mends what stands there.
    isFresh = true;
    const shown = `${text} ${form.unit}`.trim();
    part('weigh-question').textContent = asks.map((each) => askWords(each, shown, form.unit)).join(' ');
    part('weigh-keep').textContent = say('Keep {shown}', { shown });
    showAsk(true);
    part('weigh-change').focus({ preventScroll: true });
    return undefined;
  }

  function enter(status: Status, values: Readonly<Record<string, string>>): void {
    const state = session.state();
    const known = [...(recordAt(state, place)?.kept ?? []), ...asked];
    const kept = forms.map(({ id }) => `${id} ${values[id] ?? ''}`).filter((each) => known.includes(each));
    const stillOpen = !isDone(state, place);
    session.enter(
      {
        kind: 'weighed',
        place,
        cut: state.cut,
        date: state.date,
        status,
        values,
        remark: draft.remark,
        kept,
      },
      emptyDraft(state.cut),
    );
    advance(stillOpen ? place : null);
  }

  /** To the next open place; after a correction, to the first one. */
  function advance(after: Place | null): void {
    const state = session.state();
    const open = nextOpen(state, after);
    showAsk(false);
    if (open === null) {
      map.show(state, place);
      return onDone();
    }
    const changesContainer = open.container !== place.container;
    const before = place.container;
    place = open;
    draft = draftOf(open);
    isFresh = false;
    asked = new Set();
    render();
    if (changesContainer)
      note(
        say('On to {container}. The crate of {before} can be weighed apart: see totals.', {
          container: open.container,
          before,
        }),
      );
  }

  /** Nothing typed: the place stays open, and its turn comes again. */
  function pass(): void {
    const state = session.state();
    const open = nextOpen(state, place);
    if (open === null) return onDone();
    goTo(open);
    isFresh = false;
  }

  /** What asks takes the room of what can wait. */
  function showAsk(isAsking: boolean): void {
    ask.hidden = !isAsking;
    for (const id of ['weigh-statuses', 'weigh-remarks']) part(id).hidden = isAsking;
  }

  function note(text: string): void {
    part('weigh-note').textContent = text;
  }

  function render(): void {
    const state = session.state();
    part('weigh-where').textContent = placeWords(place, plantsAt(place));
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
    showAsk(false);
    map.show(state, place);
    renderFields();
    remarks.show(draft.remark);
  }

  function renderFields(): void {
    const fields = part('weigh-fields');
    if (fields.childElementCount !== forms.length) {
      fields.replaceChildren(
        ...forms.map((form, index) =>
          make(
            'button',
            {
              attributes: { type: 'button' },
              onClick: () => {
                draft = { ...draft, field: index };
                isFresh = true;
                session.type(draft);
                renderFields();
              },
            },
            make('span', { class: 'name', text: form.name }),
            make('span', { class: 'value' }),
            make('span', { class: 'unit', text: form.unit }),
          ),
        ),
      );
    }
    forms.forEach(({ id }, index) => {
      const field = fields.children[index]!;
      field.querySelector('.value')!.textContent = draft.values[id] || '–';
      field.setAttribute('aria-pressed', String(index === draft.field));
    });
    const following = forms[draft.field + 1];
    const typed = draft.values[forms[draft.field]?.id ?? ''] ?? '';
    next.textContent =
      following !== undefined && typed !== ''
        ? say('Next: {name}', { name: following.name })
        : typed === ''
          ? say('Pass')
          : say('Next');
  }

  function buildStatuses(): void {
    const cut = session.state().cut;
    const offered: Status[] = [
      'dead',
      ...(cut > 1 ? ['no regrowth' as const] : []),
      'culled',
      'not weighed',
      'not planted',
    ];
    part('weigh-statuses').replaceChildren(
      ...offered.map((status) =>
        button(statusWords(status), () => enter(status, {}), { 'data-status': status }),
      ),
    );
  }

  function buildKeys(): void {
    const mark = forms[0]?.mark ?? '.';
    const decimal = keys.querySelector<HTMLElement>('[data-key="."]')!;
    decimal.textContent = mark;
    decimal.hidden = forms.every(({ decimals }) => decimals === 0);
    part('weigh-fields').replaceChildren();
  }

  keys.addEventListener('click', ({ target }) => {
    const key =
      target instanceof Element ? target.closest<HTMLElement>('[data-key]')?.dataset['key'] : undefined;
    if (key !== undefined) type(key);
  });
  next.addEventListener('click', () => goOn());
  part('weigh-keep').addEventListener('click', () => {
    next.focus({ preventScroll: true });
    goOn();
  });
  part('weigh-change').addEventListener('click', () => {
    showAsk(false);
    next.focus({ preventScroll: true });
  });
  part('weigh-undo').addEventListener('click', () => {
    const taken = session.undo();
    if (taken === null) return note(say('There is nothing to take back.'));
    show(session);
    isFresh = true;
    note(say('Taken back.'));
  });
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

  function step(by: number): void {
    const { places, cut } = session.state();
    const at = places.findIndex((each) => placeKey(each, cut) === placeKey(place, cut));
    const to = places[at + by];
    if (to !== undefined) goTo(to);
  }
}
