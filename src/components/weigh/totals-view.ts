/** The totals of the containers, each weighed apart from its plants, and the second weighing of some pots. */
import { say } from '../../model/say.ts';
import { containerTotals } from '../../weigh/container-total.ts';
import { placeKey } from '../../weigh/place.ts';
import { repeatabilityOf, toWeighTwice } from '../../weigh/second-weighing.ts';
import { valueForms, type ValueForm } from '../../weigh/value-form.ts';
import { primaryOf } from '../../weigh/weigh-trial.ts';
import { make, part } from './dom.ts';
import type { Session } from './session.ts';
import { amount, placeWords, totalWords } from './words.ts';

/** Shows every container with the sum of its plants and room for its total. */
export function showTotals(session: Session): void {
  const form = valueForms(session.state().trial.metadata)[0]!;
  const list = part('totals-list');
  const totals = containerTotals(session.state());
  part('totals-none').hidden = totals.length > 0;
  list.replaceChildren(
    ...totals.map((total) => {
      const words = make('p', { attributes: { id: `total-said-${total.container}` } });
      const refresh = (): void => {
        const now = containerTotals(session.state()).find(({ container }) => container === total.container);
        if (now !== undefined) words.textContent = totalWords(now, form.unit);
      };
      refresh();
      const label = say('Total of {container}, {unit}', { container: total.container, unit: form.unit });
      const box = numberBox(label, total.total, form, (value) => {
        const { cut } = session.state();
        session.enter({ kind: 'total', container: total.container, cut, value }, session.draft());
        refresh();
      });
      return make('li', {}, make('h3', { text: total.container }), box, words);
    }),
  );
}

/** Shows the pots that are offered for a second weighing, without their first weights. */
export function showTwice(session: Session): void {
  const state = session.state();
  const form = valueForms(state.trial.metadata)[0]!;
  const places = toWeighTwice(state);
  part('twice-none').hidden = places.length > 0;
  part('twice-list').replaceChildren(
    ...places.map((place) => {
      const name = placeWords(place, place.plant === null ? 1 : 2);
      const box = numberBox(name, state.seconds.get(placeKey(place, state.cut)) ?? '', form, (value) => {
        session.enter({ kind: 'second', place, cut: state.cut, value }, session.draft());
        sayRepeatability(session);
      });
      return make('li', {}, box);
    }),
  );
  sayRepeatability(session);
}

function sayRepeatability(session: Session): void {
  const found = repeatabilityOf(session.state());
  const { unit } = valueForms(session.state().trial.metadata)[0]!;
  part('twice-said').textContent =
    found === null
      ? say('Two pots at least, and their agreement is shown here.')
      : say(
          '{pairs} pots weighed twice: repeatability standard deviation {deviation}; two weighings of a pot differ by more than {limit} once in twenty. The second weighing read {drift} more on average.',
          {
            pairs: found.pairs,
            deviation: amount(found.standardDeviation, unit),
            limit: amount(found.limit, unit),
            drift: amount(found.meanDifference, unit),
          },
        );
}

/** What the weighings of the present cut say of scale and hand, as an event for trial.yaml; null where nothing does. */
export function repeatabilityEvent(session: Session): string | null {
  const found = repeatabilityOf(session.state());
  if (found === null) return null;
  const { unit } = valueForms(session.state().trial.metadata)[0]!;
  const { name } = primaryOf(session.state().trial);
  return say('{name} of {pairs} pots weighed twice: repeatability standard deviation {deviation}', {
    name,
    pairs: found.pairs,
    deviation: amount(found.standardDeviation, unit),
  });
}

/** A labelled box for a number, which is taken as soon as the box is left; what is no number is refused and said. */
export function numberBox(
  label: string,
  value: string,
  { mark }: Pick<ValueForm, 'mark'>,
  onChange: (value: string) => void,
  isSigned = false,
): HTMLElement {
  const box = make('input', { attributes: { type: 'text', inputmode: 'decimal', autocomplete: 'off' } });
  box.value = value;
  const fault = make('span', { class: 'fault', attributes: { role: 'status' } });
  box.addEventListener('change', () => {
    const text = box.value.trim().replace(/[.,]/, mark);
    const isNumber = new RegExp(`^${isSigned ? '-?' : ''}\\d{1,9}([.,]\\d{1,6})?$`).test(text);
    fault.textContent = text === '' || isNumber ? '' : say('Digits only, such as 120.');
    box.setAttribute('aria-invalid', String(fault.textContent !== ''));
    if (fault.textContent === '') onChange(text);
  });
  return make('label', { class: 'number-box' }, make('span', { text: label }), box, fault);
}
