import { say } from '../model/say.ts';
import { measureName } from '../compute/tables/measures.ts';
import type { MeasureWorking, TreatmentWorking } from '../compute/workings/working.ts';
import type { analysisWorking } from '../compute/workings/analysis-working.ts';
import { escapeHtml, type FirstUnits, tableHtml } from './html.ts';

/** An analysis's working, folded: its units and formulas. */
export function analysisWorkingHtml(
  id: string,
  name: string,
  { units, steps }: ReturnType<typeof analysisWorking>,
  first: FirstUnits,
): string {
  return (
    `<details class="working"><summary>${escapeHtml(say('{name}: the units and formulas', { name }))}</summary>` +
    `<h3 id="${id}">${escapeHtml(name)}</h3>${stepsHtml(steps)}${tableHtml(units, first)}</details>`
  );
}

/** A treatment's workings, folded; following a link to a number's working unfolds them. */
export function workingHtml(
  { treatment, measures, area }: TreatmentWorking,
  data: string,
  level: number,
): string {
  const ofArea =
    area === null
      ? ''
      : `<h${level} id="${area.id}">${escapeHtml(area.heading)}</h${level}>${stepsHtml(area.steps)}`;
  return (
    `<details class="working"><summary>${escapeHtml(say('{name}: the values and formulas', { name: treatment }))}</summary>` +
    `${measures.map((measure) => measureHtml(measure, data, level)).join('')}${ofArea}</details>`
  );
}

function measureHtml(
  { id, measure, heading, values, leftOut, steps }: MeasureWorking,
  data: string,
  level: number,
): string {
  const items = values.map(
    ({ place, value, rows }) =>
      `<li>${escapeHtml(place)} <a href="${data}${rowAnchor(rows)}">${value}</a></li>`,
  );
  const out = leftOut.map(({ place, reason }) => `${escapeHtml(place)} (${escapeHtml(reason)})`);
  return (
    `<h${level} id="${id}">${escapeHtml(heading)}</h${level}>` +
    `<ul class="values" aria-label="${escapeHtml(say('Values {measure}', { measure: measureName(measure) }))}">${items.join('')}</ul>` +
    (out.length === 0 ? '' : `<p class="note">${say('Left out: {list}.', { list: out.join(', ') })}</p>`) +
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
