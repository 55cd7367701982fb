import { measureNames } from '../compute/tables/measures.ts';
import type { MeasureWorking, TreatmentWorking } from '../compute/workings/working.ts';
import { escapeHtml } from './html.ts';

/** A treatment's workings, folded; following a link to a number's working unfolds them. */
export function workingHtml({ treatment, measures, area }: TreatmentWorking, data: string): string {
  const ofArea = area === null ? '' : `<h4 id="${area.id}">${area.heading}</h4>${stepsHtml(area.steps)}`;
  return (
    `<details class="working"><summary>${escapeHtml(treatment)}: the values and formulas</summary>` +
    `${measures.map((measure) => measureHtml(measure, data)).join('')}${ofArea}</details>`
  );
}

function measureHtml({ id, measure, heading, values, leftOut, steps }: MeasureWorking, data: string): string {
  const items = values.map(
    ({ place, value, rows }) =>
      `<li>${escapeHtml(place)} <a href="${data}${rowAnchor(rows)}">${value}</a></li>`,
  );
  const out = leftOut.map(({ place, reason }) => `${escapeHtml(place)} (${escapeHtml(reason)})`);
  return (
    `<h4 id="${id}">${escapeHtml(heading)}</h4>` +
    `<ul class="values" aria-label="Values ${measureNames[measure]}">${items.join('')}</ul>` +
    (out.length === 0 ? '' : `<p class="note">Left out: ${out.join(', ')}.</p>`) +
    stepsHtml(steps)
  );
}

function stepsHtml(steps: readonly { name: string; formula: string }[]): string {
  const lines = steps.map(
    ({ name, formula }) => `<dt>${escapeHtml(name)}</dt><dd>${escapeHtml(formula)}</dd>`,
  );
  return `<dl class="pair">${lines.join('')}</dl>`;
}

function rowAnchor([first]: readonly number[]): string {
  return first === undefined ? '' : `#row-${first}`;
}
