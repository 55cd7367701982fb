import { plainText, type Words } from '../compute/words/words.ts';
import { firstUnits } from '../model/first-units.ts';

/** Attributes of an element; those that are undefined are left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** What XML 1.0 does not allow in text at all: control characters, lone surrogates and non-characters. */
// eslint cannot be asked to make an exception, so the class is built from its code points.
const forbidden = new RegExp(
  `[${['0000-0008', '000B-000C', '000E-001F', 'D800-DFFF', 'FFFE-FFFF']
    .map((range) => range.replace(/[0-9A-F]{4}/g, '\\u{$&}'))
    .join('')}]`,
  'gu',
);

/** Most text is of these alone and needs nothing done: looking first makes a figure several times faster. */
const safe = /^[\w .,:;()%+/#-]*$/;

/** Text made safe for SVG, in content and in attributes alike. */
export function escapeText(text: string): string {
  if (safe.test(text)) return text;
  return text
    .replace(forbidden, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

/** A coordinate to two decimals, so that two builds and two engines write the same. */
export function round(coordinate: number): number {
  return Math.round(coordinate * 100) / 100 + 0;
}

/** One element; its children are SVG already. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  // Most of the time that a page takes goes into its figures' elements: one string, no lists on the way.
  let written = `<${name}`;
  for (const key of Object.keys(attributes)) {
    const value = attributes[key];
    if (value === undefined) continue;
    written += ` ${key}="${typeof value === 'number' ? String(round(value)) : escapeText(value)}"`;
  }
  return children.length === 0 ? `${written}/>` : `${written}>${children.join('')}</${name}>`;
}

/** A line of text; the text is escaped here. */
export function label(text: string, attributes: Attributes): string {
  return element('text', attributes, escapeText(text));
}

/** How large a drawing is: a fixed one scales as a whole, a fluid one is as wide as its place and never scales its text. */
export type Size = { width: number; height: number } | { height: number };

/** What names a drawing, to the eye and to those who do not see it. */
export interface About {
  id: string;
  title: string;
  description: Words;
  /** A class of the style sheet. */
  kind: string;
}

/** The whole drawing, with the title and description that name it to those who do not see it. */
export function drawing(about: About, size: Size, ...children: readonly string[]): string {
  const titleId = `${about.id}-title`;
  const descriptionId = `${about.id}-desc`;
  const measures =
    'width' in size
      ? { viewBox: `0 0 ${String(round(size.width))} ${String(round(size.height))}`, ...size }
      : { width: '100%', height: size.height };
  return element(
    'svg',
    {
      class: `plot ${about.kind} ${'width' in size ? 'fixed' : 'fluid'}`,
      role: 'img',
      'aria-labelledby': `${titleId} ${descriptionId}`,
      ...measures,
    },
    element('title', { id: titleId }, escapeText(about.title)),
    element('desc', { id: descriptionId }, escapeText(plainText(about.description, firstUnits()))),
    ...children,
  );
}
