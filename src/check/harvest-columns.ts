import type { Variable } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { isWeight } from '../model/units.ts';
import type { Metadata } from './facts.ts';
import { parseDecimal, parseSigned, type DecimalMark } from './number.ts';
import { ownValue } from './own-value.ts';
import { toGrams } from './to-grams.ts';

/** The columns of harvest.csv beside the variables. */
export const harvestColumns = {
  needed: ['container', 'row', 'column'],
  optional: ['cut', 'date', 'plant', 'status', 'pot_total', 'remark'],
} as const;

const layoutColumns = ['container', 'row', 'column', 'block', 'plot', 'plants'];
const reserved = new Set<string>([
  ...harvestColumns.needed,
  ...harvestColumns.optional,
  ...layoutColumns,
  'trial',
]);

/** True for the name of a column that every trial may have, so that no factor or variable may bear it. */
export function isReserved(id: string): boolean {
  return reserved.has(id);
}

/** How a column of values is read. */
export interface ValueColumn {
  name: string;
  isWeight: boolean;
  /** True for counts, which are whole. */
  isCount: boolean;
  /** What marks there are, and how to say so; null where any number will do. */
  scale: { has(value: number): boolean; words: string } | null;
  /** The value in g or in the variable's own unit, or null where the text is no number. */
  parse(text: string): number | null;
}

/** The unit in which harvest.csv gives a variable. */
export function unitInFile({ draft }: Metadata, variable: Variable): string {
  return ownValue(draft.harvest?.columns, variable.id)?.unit ?? variable.unit ?? '';
}

/** How the values of a variable are read. */
export function valueColumn(metadata: Metadata, variable: Variable, mark: DecimalMark): ValueColumn {
  const unit = unitInFile(metadata, variable);
  if (isWeight(variable.unit) && isWeight(unit)) return weightColumn(variable.id, unit, mark);
  const isCount = variable.kind === 'counted';
  const parse = isCount ? parseDecimal : parseSigned;
  return {
    name: variable.id,
    isWeight: false,
    isCount,
    scale: scaleOf(variable),
    parse: (text) => parse(text, mark),
  };
}

function scaleOf({ kind, scale, marks }: Variable): ValueColumn['scale'] {
  if (kind !== 'scored') return null;
  if (scale === 'yes or no')
    return { has: (value) => value === 0 || value === 1, words: say('1 for yes or 0 for no') };
  if (scale === 'BBCH') {
    return {
      has: (value) => Number.isInteger(value) && value >= 0 && value <= 99,
      words: say('a BBCH code from 0 to 99'),
    };
  }
  if (marks === undefined) return null;
  const known = Object.keys(marks)
    .map(Number)
    .sort((a, b) => a - b);
  const words = say('one of {marks}', { marks: known.join(', ') });
  return { has: (value) => known.includes(value), words };
}

function weightColumn(name: string, unit: string, mark: DecimalMark): ValueColumn {
  const parse = (text: string): number | null => {
    const value = parseDecimal(text, mark);
    return value === null || unit === 'g' ? value : toGrams(value, unit, text);
  };
  return { name, isWeight: true, isCount: false, scale: null, parse };
}

/** How pot_total is read: in its own declared unit, else in that of the primary variable's column beside it. */
export function potTotalColumn(metadata: Metadata, primary: Variable, mark: DecimalMark): ValueColumn {
  const unit = metadata.draft.harvest?.columns?.['pot_total']?.unit ?? unitInFile(metadata, primary);
  if (isWeight(unit)) return weightColumn('pot_total', unit, mark);
  return {
    name: 'pot_total',
    isWeight: false,
    isCount: false,
    scale: null,
    parse: (text) => parseDecimal(text, mark),
  };
}
