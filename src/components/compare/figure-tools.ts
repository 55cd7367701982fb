import type { Figure } from '../../model/figure.ts';
import { say } from '../../model/say.ts';
import { escapeHtml } from '../html.ts';

/** Buttons that keep a figure as a file; without a script they are not shown. */
export function figureTools({ id, title }: Figure): string {
  const button = (kind: 'svg' | 'png') =>
    `<button type="button" data-keep="${kind}" data-figure="${escapeHtml(id)}" aria-label="${kind.toUpperCase()}: ${escapeHtml(title)}">${kind.toUpperCase()}</button>`;
  return `<p class="tools scripted"><span>${escapeHtml(say('Keep this figure:'))}</span> ${button('svg')} ${button('png')}</p>`;
}
