import { say } from '../../model/say.ts';
import { gramsIn, litresIn } from '../../model/units.ts';
import { formatNumber } from '../format/format-number.ts';
import type { InBothUnits } from '../format/format-quantity.ts';
import type { Solution } from '../nutrients/solution.ts';
import { stockInWords } from '../nutrients/stock-warnings.ts';
import { type Stock, stockWeights } from '../nutrients/stock-weights.ts';
import { weighingFor } from '../nutrients/weighing.ts';
import type { PageTable } from '../tables/page-table.ts';
import { digitsFor } from './digits-for.ts';
import { halfUp } from './half-up.ts';

/** What is to be mixed. */
export interface Mixing {
  /** Litres of finished solution. */
  litres: number;
  /** 1 part of stock in this many parts of solution; absent where no stock is made. */
  ratio?: number | undefined;
  /** Litres of each stock to make up. */
  stockLitres: number;
}

const [ounce, gallon] = [gramsIn['oz']!, litresIn['gal']!];

type Salts = Solution['amounts']['salts'];

const gramsHeading: InBothUnits = { metric: 'g', us: 'oz' };
/** US fluid ounces in a US gallon. */
const fluidOuncesInGallon = 128;

/** What to weigh: each salt straight into the tank, and each stock by itself where the recipe has a ratio. */
export function mixingTables({ amounts }: Solution, { litres, ratio, stockLitres }: Mixing): PageTable[] {
  const direct = straightTable(amounts.salts, { litres, ratio, stockLitres });
  if (ratio === undefined) return [direct];
  const stocks = stockWeights(amounts.salts, ratio);
  return [direct, ...stocks.map((stock) => stockTable(stock, { litres, ratio, stockLitres }))];
}

function straightTable(salts: Salts, { litres, ratio }: Mixing): PageTable {
  const weighed = weighingFor(salts, litres);
  const grams = gramsInBoth(weighed.map((each) => each.grams));
  const each = digitsFor(salts.map(({ gramsPerLitre }) => gramsPerLitre));
  const usEach = digitsFor(weighed.map(({ ouncesPerGallon }) => ouncesPerGallon));
  return {
    caption: say('Weighed straight into the tank, for {volume} of solution', {
      volume: both(litresInBoth(litres)),
    }),
    columns: [
      { heading: say('Salt'), numeric: false },
      { heading: say('Weigh'), unit: gramsHeading, numeric: true },
      { heading: say('In the solution'), unit: { metric: 'g/L', us: 'oz/US gal' }, numeric: true },
    ],
    rows: salts.map(({ name, gramsPerLitre }, index) => ({
      heading: name,
      cells: [
        grams[index]!,
        {
          metric: formatNumber(halfUp(gramsPerLitre, each), each),
          us: formatNumber(halfUp(weighed[index]!.ouncesPerGallon, usEach), usEach),
        },
      ],
    })),
    notes: ratio === undefined ? [] : eitherNotes(salts),
  };
}

/** That the stocks stand for the same salts, and which salts no stock holds. */
function eitherNotes(salts: Salts): string[] {
  const alone = salts.filter(({ stock }) => stock === null).map(({ name }) => name);
  const either = say('Either this or the stocks below, never both.');
  if (alone.length === 0 || alone.length === salts.length) return [either];
  const beside = say('Beside the stocks, these still go straight into the tank: {salts}.', {
    salts: alone.join(', '),
  });
  return [`${either} ${beside}`];
}

function stockTable(stock: Stock, { litres, ratio, stockLitres }: Mixing & { ratio: number }): PageTable {
  const bottle = stock.salts.flatMap(({ oneIn, onePlus }) => [oneIn * stockLitres, onePlus * stockLitres]);
  const grams = gramsInBoth(bottle);
  const parts = formatNumber(ratio, Number.isInteger(ratio) ? 0 : 1);
  const needed = [litres / ratio, litres / (ratio + 1)].map((volume) => both(litresInBoth(volume)));
  return {
    caption: say('{stock}, {volume} of it', {
      stock: capital(stockInWords(stock.name)),
      volume: both(litresInBoth(stockLitres)),
    }),
    columns: [
      { heading: say('Salt'), numeric: false },
      { heading: say('1 in {parts}', { parts }), unit: gramsHeading, numeric: true },
      { heading: say('1 plus {parts}', { parts }), unit: gramsHeading, numeric: true },
    ],
    rows: stock.salts.map(({ name }, index) => ({
      heading: name,
      cells: [grams[2 * index]!, grams[2 * index + 1]!],
    })),
    notes: [
      say(
        '1 in {parts}: for {volume} of solution take {some} and fill up with water. 1 plus {parts}, as injectors are often marked: the stronger stock of the last column, {less} of it to {parts} times as much water.',
        { parts, volume: both(litresInBoth(litres)), some: needed[0]!, less: needed[1]! },
      ),
    ],
  };
}

/** A column's grams, and the same in ounces. */
function gramsInBoth(column: readonly number[]): InBothUnits[] {
  const ounces = column.map((grams) => grams / ounce);
  const [digits, usDigits] = [digitsFor(column), digitsFor(ounces)];
  return column.map((grams, index) => ({
    metric: formatNumber(halfUp(grams, digits), digits),
    us: formatNumber(halfUp(ounces[index]!, usDigits), usDigits),
  }));
}

/** A volume to three figures, in litres (millilitres below one) and US gallons (fluid ounces below one). */
export function litresInBoth(litres: number): InBothUnits {
  const small = litres < 1;
  const gallons = litres / gallon;
  return {
    metric: small ? `${threeFigures(litres * 1000)}\u00A0mL` : `${threeFigures(litres)}\u00A0L`,
    us:
      gallons < 1
        ? `${threeFigures(gallons * fluidOuncesInGallon)}\u00A0US fl oz`
        : `${threeFigures(gallons)}\u00A0US gal`,
  };
}

/** At least three figures, without zeros behind the point. */
function threeFigures(value: number): string {
  const digits = value === 0 ? 0 : Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(value))));
  return formatNumber(
    Number(value.toFixed(digits)),
    Math.min(digits, decimalsOf(Number(value.toFixed(digits)))),
  );
}

function decimalsOf(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}

function both({ metric, us }: InBothUnits): string {
  return us === null ? metric : `${metric} (${us})`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
