import type { Figure } from '../model/figure.ts';
import { firstUnits } from '../model/first-units.ts';
import { say } from '../model/say.ts';
import { escapeHtml, figureTableHtml, wordsHtml } from './html.ts';

export interface FigureBlockOptions {
  /** The title alone below the figure, where several alike stand together; the description stays within it. */
  brief?: boolean;
  /** Stands below the caption: what may be done with the figure. */
  tools?: string;
  /** The folded part with the figure's numbers, given its summary and how its content is made. */
  folded?: (summary: string, content: () => string) => string;
}

/** A drawn figure with its title, its description for all readers, and its table twin. */
export function figureHtml(figure: Figure, options: FigureBlockOptions = {}): string {
  const { brief = false, tools = '', folded = foldedHtml } = options;
  const title = escapeHtml(figure.title);
  const description = brief ? '' : ` ${wordsHtml(figure.description, firstUnits())}`;
  return (
    `<figure id="${escapeHtml(figure.id)}"><div class="drawing"${region(figure)}>${figure.svg}</div>` +
    `<figcaption><strong>${title}.</strong>${description}</figcaption>${tools}` +
    `${folded(say('The numbers of this figure'), () => figureTableHtml(figure.table))}</figure>`
  );
}

/** Folded away until it is asked for. */
export function foldedHtml(summary: string, content: () => string): string {
  return `<details><summary>${escapeHtml(summary)}</summary>${content()}</details>`;
}

/** A fluid drawing fits any column, and a fixed one of this width fits a phone's: only a wider one is moved sideways. */
function region({ svg, title }: Figure): string {
  const width = Number(/^<svg[^>]* width="([\d.]+)"/.exec(svg)?.[1] ?? 0);
  return width > 288 ? ` role="group" aria-label="${escapeHtml(title)}" tabindex="0"` : '';
}
