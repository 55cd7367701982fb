import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import { noNumber, type PageTable } from '../tables/page-table.ts';
import { digitsAsWritten } from './quantities.ts';

/** The salts of the solution, as their labels say; null where none are given. */
export function saltsTable(trial: Trial): PageTable | null {
  const { salts = [], stock_ratio: ratio, water } = trial.metadata.nutrients ?? {};
  if (salts.length === 0) return null;
  const most = Math.max(...salts.map((salt) => digitsAsWritten(salt.grams_per_litre)));
  const analysis = (percent: Record<string, number> = {}) =>
    Object.entries(percent)
      .map(([element, value]) => `${element} ${formatNumber(value, digitsAsWritten(value))}%`)
      .join(', ');
  const notes = [];
  if (water !== undefined && Object.keys(water).length > 0) {
    const contents = Object.entries(water).map(([element, value]) => `${element} ${value} mg/L`);
    notes.push(say('The source water already held {contents}.', { contents: contents.join(', ') }));
  }
  if (ratio !== undefined)
    notes.push(say('One part of each stock solution went into {ratio} parts of solution.', { ratio }));
  return {
    caption: say('What went into the solution, as the labels say'),
    columns: [
      { heading: say('Salt'), numeric: false },
      { heading: say('Finished solution'), unit: 'g/L', numeric: true },
      { heading: say('Label'), numeric: false },
      { heading: say('Stock'), numeric: false },
    ],
    rows: salts.map((salt) => ({
      heading: salt.name,
      cells: [
        formatNumber(salt.grams_per_litre, most),
        salt.formula ?? (analysis(salt.percent) || noNumber),
        salt.stock ?? noNumber,
      ],
    })),
    notes,
  };
}
