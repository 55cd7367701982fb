import type { Figure } from '../model/figure.ts';

/** The same figure under another id, so that it can stand twice on a page: the ids inside its SVG begin with it too. */
export function figureWithId(figure: Figure, id: string): Figure {
  if (id === figure.id) return figure;
  // Between a quote, a number sign or a space before it, and a hyphen or the like behind, stands an id.
  const own = new RegExp(`(?<=["#\\s(])${figure.id}(?=[-"\\s)])`, 'g');
  return { ...figure, id, svg: figure.svg.replace(own, id) };
}
