import { say } from '../../model/say.ts';
import type { Nutrient } from '../../model/nutrient-keys.ts';
import { formatNumber } from '../format/format-number.ts';
import { milligramsPerMillimole, type IonId, ions } from '../nutrients/ions.ts';
import type { Amount } from '../nutrients/recipe.ts';
import { listedIons, listedNutrients, type Solution } from '../nutrients/solution.ts';
import type { PageTable } from '../tables/page-table.ts';
import { halfUp } from './half-up.ts';
import { ionInWords, nutrientInWords } from './nutrient-words.ts';

/** Nutrients that plants need in traces, listed apart because their numbers need more digits. */
const traces: readonly Nutrient[] = ['Fe', 'Mn', 'Zn', 'Cu', 'B', 'Mo', 'Co', 'Ni'];

/** What the finished solution holds: main nutrients, traces, and the charges of its ions. */
export function contentTables(solution: Solution): PageTable[] {
  const { total } = solution.amounts;
  const listed = listedNutrients(solution.amounts);
  const [main, trace] = [listed.filter((name) => !isTrace(name)), listed.filter(isTrace)];
  const mainTable = nutrientsTable(
    solution,
    main,
    { caption: say('In the finished solution, the water’s own content included'), unit: 'mmol/L', scale: 1 },
    [1, 2],
  );
  if (trace.every((name) => total[name].value === 0)) {
    const none = say('It holds no trace elements ({elements}), which plants need too.', {
      elements: trace.join(', '),
    });
    return [{ ...mainTable, notes: [none] }, ionsTable(solution)];
  }
  const traceTable = nutrientsTable(
    solution,
    trace,
    { caption: say('Trace elements in the finished solution'), unit: 'µmol/L', scale: 1000 },
    [3, 2],
  );
  return [mainTable, traceTable, ionsTable(solution)];
}

function isTrace(nutrient: Nutrient): boolean {
  return traces.includes(nutrient);
}

function nutrientsTable(
  { amounts }: Solution,
  listed: readonly Nutrient[],
  { caption, unit, scale }: { caption: string; unit: string; scale: number },
  [digits, moleDigits]: readonly [number, number],
): PageTable {
  return {
    caption,
    columns: [
      { heading: say('Nutrient'), numeric: false },
      { heading: say('In all'), unit: 'mg/L', numeric: true },
      { heading: say('In all'), unit, numeric: true },
      { heading: say('Of it from the water'), unit: 'mg/L', numeric: true },
    ],
    rows: listed.map((nutrient) => ({
      heading: nutrientInWords(nutrient),
      cells: [
        amountText(amounts.total[nutrient], 1, digits),
        amountText(amounts.total[nutrient], scale / milligramsPerMillimole(nutrient), moleDigits),
        amountText(amounts.water[nutrient], 1, digits),
      ],
    })),
    notes: [],
  };
}

function ionsTable({ balance }: Solution): PageTable {
  const listed = listedIons(balance);
  const side = (sign: number): IonId[] => listed.filter((ion) => Math.sign(ions[ion].charge) === sign);
  const row = (heading: string, amount: Amount) => ({ heading, cells: [amountText(amount, 1, 2)] });
  const rowOf = (ion: IonId) => row(ionInWords(ion), balance.meq[ion]);
  const { differencePercent: difference } = balance;
  return {
    caption: say('Charges: what is dissolved carries as many positive as negative'),
    columns: [
      { heading: say('Ion'), numeric: false },
      { heading: say('In the finished solution'), unit: 'meq/L', numeric: true },
    ],
    rows: [
      ...side(1).map(rowOf),
      row(say('Cations in all'), balance.cations),
      ...side(-1).map(rowOf),
      row(say('Anions in all'), balance.anions),
    ],
    notes:
      difference === null
        ? []
        : [
            say('Cations less anions: {difference} % of half their sum.', {
              difference: formatNumber(difference, 1, { plus: true }),
            }),
          ],
  };
}

/** A number, or what is known of it: never 0 for what no label tells. */
export function amountText({ value, atLeast }: Amount, factor: number, digits: number): string {
  if (value !== null) return formatNumber(halfUp(value * factor, digits), digits);
  const least = halfUp(atLeast * factor, digits);
  return least > 0 ? say('at least {number}', { number: formatNumber(least, digits) }) : say('unknown');
}
