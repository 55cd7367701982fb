import { solutionOf, type Solution } from '../../compute/nutrients/solution.ts';
import { conductivityTable, rangeInWords } from '../../compute/solution/conductivity-table.ts';
import { contentTables } from '../../compute/solution/content-tables.ts';
import { litresInBoth, mixingTables } from '../../compute/solution/mixing-tables.ts';
import { ratiosTable } from '../../compute/solution/ratios-table.ts';
import type { PageTable } from '../../compute/tables/page-table.ts';
import { formatNumber } from '../../compute/format/format-number.ts';
import { escapeHtml, type FirstUnits, tableHtml, textHtml } from '../html.ts';
import { writeAnalysis } from './read-analysis.ts';
import type { Inputs } from './read-inputs.ts';

/** What the calculator shows for what was asked, and says of it in one line. */
export interface Answers {
  /** The mixing card: what to weigh and what a meter should show. */
  card: string;
  /** What the solution holds. */
  contents: string;
  /** For those who hear the page: the main nutrients, the conductivity, how much there is to look out for. */
  told: string;
}

/** The answers to what the fields ask for. All that was typed is escaped. */
export function answersHtml(inputs: Inputs, title: string, first: FirstUnits): Answers {
  const { recipe, litres, stockLitres, measuredEc } = inputs;
  const solution = solutionOf(recipe, measuredEc === null ? {} : { measuredEc });
  const warnings = solution.warnings.map(({ text }) => text);
  const measured =
    measuredEc === null ? [] : [{ heading: 'Measured', lowest: measuredEc, highest: measuredEc }];
  const mixing = mixingTables(solution, { litres, ratio: recipe.stock_ratio, stockLitres });
  const contents = [...contentTables(solution), ratiosTable(solution), conductivityTable(solution, measured)];
  const card = [
    `<h2 id="card">Mixing card${title === '' ? '' : `: ${escapeHtml(title)}`}</h2>`,
    `<p>${asked(inputs, first)}</p>`,
    listHtml('Look out', warnings),
    ...mixing.slice(0, 1).map((table) => tableHtml(table, first)),
    besideHtml(mixing.slice(1), first),
    `<p>${conductivityInWords(solution, measuredEc)}</p>`,
    '<p class="signed">Mixed by ____________________ on ____________________</p>',
  ];
  const held = [
    '<h2 id="held">What the solution holds</h2>',
    besideHtml(contents, first),
    solution.reason === '' ? '' : `<p class="note">${escapeHtml(solution.reason)}</p>`,
  ];
  return { card: card.join(''), contents: held.join(''), told: toldOf(solution, warnings.length) };
}

function asked({ recipe, litres }: Inputs, first: FirstUnits): string {
  const water = writeAnalysis(recipe.water ?? {});
  const ratio = recipe.stock_ratio;
  return [
    `For ${textHtml(litresInBoth(litres), first)} of solution`,
    water === ''
      ? 'in water that is taken to hold nothing'
      : `in water that holds ${escapeHtml(water)} mg/L already`,
    ...(ratio === undefined ? [] : [`from stocks of 1 part in ${String(ratio)}`]),
  ]
    .join(', ')
    .concat('.');
}

/** Tables side by side where there is room. */
function besideHtml(tables: readonly PageTable[], first: FirstUnits): string {
  const boxes = tables.map((table) => `<div>${tableHtml(table, first)}</div>`);
  return `<div class="beside">${boxes.join('')}</div>`;
}

function listHtml(heading: string, sentences: readonly string[]): string {
  if (sentences.length === 0) return '';
  const items = sentences.map((sentence) => `<li>${escapeHtml(sentence)}</li>`).join('');
  return `<div class="look-out"><h3>${heading}</h3><ul>${items}</ul></div>`;
}

function conductivityInWords({ ec }: Solution, measured: number | null): string {
  const range = rangeInWords(ec);
  const expected =
    range === null
      ? 'The conductivity to expect cannot be reckoned from what is given.'
      : `A meter should show <strong>${range} mS/cm</strong> at 25 °C.`;
  return measured === null ? expected : `${expected} Measured: ${formatNumber(measured, 2)} mS/cm.`;
}

function toldOf({ amounts, ec }: Solution, warnings: number): string {
  const main = (['N', 'P', 'K', 'Ca', 'Mg', 'S'] as const).map((nutrient) => {
    const { value } = amounts.total[nutrient];
    return `${nutrient} ${value === null ? 'unknown' : formatNumber(value, 0)}`;
  });
  const range = rangeInWords(ec);
  const things = warnings === 1 ? '1 thing' : `${String(warnings)} things`;
  return [
    `${main.join(', ')} mg/L`,
    range === null ? 'EC unknown' : `EC ${range} mS/cm`,
    warnings === 0 ? 'nothing to look out for' : `${things} to look out for`,
  ]
    .join('; ')
    .concat('.');
}
