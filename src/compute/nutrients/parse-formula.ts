import { say } from '../../model/say.ts';
import { atomicWeights } from './atomic-weights.ts';

/** A chemical formula taken apart: how many of each atom, and the groups that tell in which form N and C are. */
export interface Formula {
  /** Atoms of each element in one formula unit; water of a hydrate included. */
  atoms: Readonly<Record<string, number>>;
  /** Nitrogen atoms written as nitrate, NO3. */
  nitrate: number;
  /** Nitrogen atoms written as ammonium, NH4. */
  ammonium: number;
  /** Nitrogen atoms written as amide, NH2, as in urea. */
  amide: number;
  /** Carbon atoms written as carbonate or bicarbonate, CO3 after anything but carbon. */
  carbonate: number;
}

/** A formula, or what is wrong with it in words that follow its name. */
export type FormulaOrProblem = { formula: Formula } | { problem: string };

interface Atom {
  symbol: string;
  count: number;
}
type Groups = Omit<Formula, 'atoms'>;
interface Tally extends Groups {
  atoms: Map<string, number>;
}

const subscripts = '₀₁₂₃₄₅₆₇₈₉';
const mostOfOne = 1e6;
const longest = 100;

/**
 * Reads a formula such as `MgSO4.7H2O`, `Ca(NO3)2·4H2O`, `5Ca(NO3)2.NH4NO3.10H2O`, `(NH4)2SO4` or
 * `CaSO4.0.5H2O`. A full stop, a middle dot, an asterisk or a space parts the salt from its water; a number
 * before a part multiplies it, and may have decimals; ( ) and [ ] nest. The nitrogen's form is read off groups as
 * written (NO3, NH4, NH2), so a formula that only sums its atoms (N2H4O3) leaves the form open.
 *
 * @example parseFormula('MgSO4.7H2O') // {formula: {atoms: {Mg: 1, S: 1, O: 11, H: 14}, ...}}
 */
export function parseFormula(text: string): FormulaOrProblem {
  if (text.length > longest) return { problem: say('is longer than {most} characters', { most: longest }) };
  const plain = text
    .trim()
    .replaceAll(/[₀-₉]/g, (digit) => String(subscripts.indexOf(digit)))
    .replaceAll(/(?<=^|[.·•∙⋅*]\s*)(\d+(?:\.\d+)?)\s+(?=[A-Z([])/g, '$1')
    .replaceAll(/\s*[·•∙⋅*]\s*|\s+\.\s*|\.\s+|\s+/g, '·')
    .replaceAll(/(?<=[A-Za-z)\]\d])\.(?=[A-Za-z([\d])/g, '·');
  if (plain === '') return { problem: say('is empty') };
  const total = empty();
  for (const part of partsOf(plain)) {
    const match = /^(\d+(?:\.\d+)?)?(.+)$/u.exec(part);
    if (!match) return { problem: say('has nothing between two dots') };
    const read = readPart(match[2]!);
    if (typeof read === 'string') return { problem: read };
    const times = match[1] === undefined ? 1 : Number(match[1]);
    if (!(times > 0 && times <= mostOfOne))
      return { problem: say('takes a part {times} times', { times: match[1]! }) };
    add(total, read, times);
  }
  return { formula: { ...total, atoms: Object.fromEntries(total.atoms) } };
}

/** Parts at the dots, but for the dot of a decimal multiplier: `CaSO4·0·5H2O` is CaSO4 and 0.5 H2O. */
function partsOf(plain: string): string[] {
  return plain.replaceAll(/·(\d+)·(?=\d)/g, '·$1.').split('·');
}

function empty(): Tally {
  return { atoms: new Map(), nitrate: 0, ammonium: 0, amide: 0, carbonate: 0 };
}

function add(total: Tally, part: Tally, times: number): void {
  for (const [symbol, count] of part.atoms) {
    total.atoms.set(symbol, (total.atoms.get(symbol) ?? 0) + count * times);
  }
  total.nitrate += part.nitrate * times;
  total.ammonium += part.ammonium * times;
  total.amide += part.amide * times;
  total.carbonate += part.carbonate * times;
}

/** One part without dots, or what is wrong with it. */
function readPart(part: string): Tally | string {
  const open: { tally: Tally; run: Atom[]; bracket: string }[] = [{ tally: empty(), run: [], bracket: '' }];
  let rest = part;
  while (rest !== '') {
    const level = open.at(-1)!;
    const atom = /^([A-Z][a-z]?)(\d*)/.exec(rest);
    const closing = /^([)\]])(\d*)/.exec(rest);
    if (atom) {
      if (!Object.hasOwn(atomicWeights, atom[1]!))
        return say('names "{symbol}", which is no element known here', { symbol: atom[1]! });
      const count = numberOf(atom[2]!);
      if (count === null)
        return say('has the number {number} after {symbol}', { number: atom[2]!, symbol: atom[1]! });
      level.run.push({ symbol: atom[1]!, count });
      rest = rest.slice(atom[0].length);
    } else if (rest.startsWith('(') || rest.startsWith('[')) {
      closeRun(level);
      open.push({ tally: empty(), run: [], bracket: rest.startsWith('(') ? ')' : ']' });
      rest = rest.slice(1);
    } else if (closing) {
      if (level.bracket !== closing[1])
        return say('has a "{bracket}" that nothing opened', { bracket: closing[1]! });
      const count = numberOf(closing[2]!);
      if (count === null) return say('has the number {number} after a bracket', { number: closing[2]! });
      closeRun(level);
      open.pop();
      add(open.at(-1)!.tally, level.tally, count);
      rest = rest.slice(closing[0].length);
    } else {
      return say('has "{found}" where an element such as K or Mg should stand', { found: rest.slice(0, 10) });
    }
  }
  if (open.length > 1) return say('has a bracket that is not closed');
  closeRun(open[0]!);
  return open[0]!.tally;
}

function numberOf(digits: string): number | null {
  if (digits === '') return 1;
  const number = Number(digits);
  return number >= 1 && number <= mostOfOne ? number : null;
}

/** Counts a run of atoms without brackets, with the groups written in it. */
function closeRun(level: { tally: Tally; run: Atom[] }): void {
  const { tally, run } = level;
  for (const [at, { symbol, count }] of run.entries()) {
    tally.atoms.set(symbol, (tally.atoms.get(symbol) ?? 0) + count);
    const next = run[at + 1];
    if (symbol === 'N' && count === 1 && next?.symbol === 'O' && next.count === 3) tally.nitrate += 1;
    if (symbol === 'N' && count === 1 && next?.symbol === 'H' && next.count === 4) tally.ammonium += 1;
    if (symbol === 'N' && count === 1 && next?.symbol === 'H' && next.count === 2) tally.amide += 1;
    const carbonate = symbol === 'C' && count === 1 && next?.symbol === 'O' && next.count === 3;
    if (carbonate && run[at - 1]?.symbol !== 'C') tally.carbonate += 1;
  }
  run.length = 0;
}
