/** Fields that a script makes, each with its label. */
import { make } from '../weigh/dom.ts';

export function labelled(label: string, control: HTMLElement): HTMLElement {
  return make('label', { class: 'field' }, make('span', { text: label }), control);
}

export function textField(label: string, value: string, set: (text: string) => void): HTMLElement {
  const input = make('input', { attributes: { type: 'text', autocomplete: 'off' } });
  input.value = value;
  input.addEventListener('change', () => {
    set(input.value.trim());
  });
  return labelled(label, input);
}

export function choiceField(
  label: string,
  value: string,
  choices: readonly (readonly [string, string])[],
  set: (value: string) => void,
): HTMLElement {
  return labelled(label, choice(value, choices, set));
}

export function choice(
  value: string,
  choices: readonly (readonly [string, string])[],
  set: (value: string) => void,
  name?: string,
): HTMLSelectElement {
  const options = choices.map(([one, text]) => make('option', { text, attributes: { value: one } }));
  const select = make('select', name === undefined ? {} : { attributes: { 'aria-label': name } }, ...options);
  select.value = value;
  select.addEventListener('change', () => {
    set(select.value);
  });
  return select;
}

export function checkField(
  label: string,
  isChecked: boolean,
  set: (isChecked: boolean) => void,
): HTMLElement {
  const input = make('input', { attributes: { type: 'checkbox' } });
  input.checked = isChecked;
  input.addEventListener('change', () => {
    set(input.checked);
  });
  return make('label', { class: 'field tick' }, input, make('span', { text: label }));
}
