/** What a reader sees, hears or is shown on hovering, read off a page's HTML. */

/** A text of a page: what it is, and itself with its white space made even. */
export interface VisibleText {
  kind: 'text' | 'alt' | 'aria-label' | 'title' | 'placeholder' | 'description';
  text: string;
}

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  '#39': "'",
  nbsp: '\u00a0',
};
const plain = (html: string): string =>
  html
    .replace(/&(amp|lt|gt|quot|#39|nbsp);/g, (_, name: string) => entities[name]!)
    .replace(/\s+/g, ' ')
    .trim();

/** Every text of a page once, in its order; scripts, styles and what is set as code are no words of the page. */
export function visibleTexts(html: string): VisibleText[] {
  const shown = html
    .replace(/<(script|style|code|pre)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<!--[\s\S]*?-->/g, '');
  const found = new Map<string, VisibleText>();
  const add = (kind: VisibleText['kind'], text: string): void => {
    if (text !== '') found.set(`${kind} ${text}`, { kind, text });
  };
  for (const [, text = ''] of shown.matchAll(/<meta name="description" content="([^"]*)"/g))
    add('description', plain(text));
  for (const [, kind, text = ''] of shown.matchAll(/ (alt|aria-label|title|placeholder)="([^"]*)"/g))
    add(kind as VisibleText['kind'], plain(text));
  for (const text of shown.replace(/^[\s\S]*?<body/, '<body').split(/<[^>]*>/)) add('text', plain(text));
  return [...found.values()];
}
