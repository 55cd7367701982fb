/** Small ways of making and finding elements; all text is set as text, never as markup. */

/** The element of that id, which the page is known to have. */
export function part<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found as Kind;
}

interface Looks {
  text?: string;
  class?: string;
  attributes?: Readonly<Record<string, string>>;
  onClick?: () => void;
}

/** Makes an element. */
export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  looks: Looks = {},
  ...inside: (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  if (looks.text !== undefined) element.textContent = looks.text;
  if (looks.class !== undefined) element.className = looks.class;
  for (const [key, value] of Object.entries(looks.attributes ?? {})) element.setAttribute(key, value);
  const { onClick } = looks;
  if (onClick !== undefined) element.addEventListener('click', onClick);
  element.append(...inside);
  return element;
}

/** A button that is no form's. */
export function button(
  text: string,
  onClick: () => void,
  attributes: Looks['attributes'] = {},
): HTMLButtonElement {
  return make('button', { text, onClick, attributes: { type: 'button', ...attributes } });
}
