import type { FoundPage } from './index-files.ts';

/**
 * A found page as an entry of the list: what kind it is and when it was grown, its title, what it says first,
 * and the place where the words stand. Every text of the index is set as text, never as markup.
 */
export function resultEntry(
  { url, excerpt, meta }: FoundPage,
  kinds: Readonly<Record<string, string>>,
): Node {
  const { title = url, kind = '', season = '', metric = '', us = '' } = meta;
  const entry = document.createElement('li');
  const note = paragraph('note', [[kinds[kind] ?? kind, season].filter(Boolean).join(', ')]);
  const heading = document.createElement('h2');
  const link = document.createElement('a');
  link.href = url;
  link.textContent = title;
  heading.append(link);
  const body = document.createElement('div');
  body.append(heading, ...sentence(metric, us), ...place(excerpt));
  entry.append(note, body);
  return entry;
}

/** In both units, of which the page shows the reader's. */
function sentence(metric: string, us: string): Node[] {
  if (metric === '') return [];
  if (metric === us) return [paragraph('', [metric])];
  return [paragraph('', [span('metric', metric), span('us', us)])];
}

/** The place found; nothing where the words stand in the title or the sentence alone. */
function place(excerpt: string): Node[] {
  const { body } = new DOMParser().parseFromString(excerpt, 'text/html');
  if (body.querySelector('mark') === null) return [];
  const pieces = [...body.childNodes].map((piece) => {
    if (piece.nodeName !== 'MARK') return piece.textContent ?? '';
    const mark = document.createElement('mark');
    mark.textContent = piece.textContent;
    return mark;
  });
  return [paragraph('note', ['… ', ...pieces, ' …'])];
}

function paragraph(name: string, pieces: readonly (string | Node)[]): HTMLElement {
  const element = document.createElement('p');
  if (name !== '') element.className = name;
  element.append(...pieces);
  return element;
}

function span(name: string, text: string): HTMLElement {
  const element = document.createElement('span');
  element.className = name;
  element.textContent = text;
  return element;
}
