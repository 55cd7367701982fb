import { stepOf } from '../check/rules/off-the-scale.ts';
import { unitInFile, valueColumn } from '../check/harvest-columns.ts';
import { markInWords } from '../compute/marks-in-words.ts';
import type { TrialMetadata, Variable } from '../model/trial.ts';
import { gramsIn, isWeight } from '../model/units.ts';
import { checkedMetadata } from './weigh-trial.ts';

/** How a value of a variable is typed. */
export interface ValueForm {
  id: string;
  name: string;
  /** As harvest.csv gives it, such as `g`; empty where there is none. */
  unit: string;
  /** Digits after the decimal mark that the scale shows. */
  decimals: number;
  mark: '.' | ',';
  /** The marks that there are, each with what it means; none where any number will do. */
  marks: readonly { value: string; text: string }[];
  /** What the text of a value means; empty where nothing says so. */
  meaning: (text: string) => string;
}

/** The decimals that are offered where no resolution says how many. */
const freely = 3;

/** How the values of each variable are typed, the primary one first. */
export function valueForms(metadata: TrialMetadata): ValueForm[] {
  return metadata.variables.map((variable) => ({
    id: variable.id,
    name: nameOf(variable),
    unit: unitInFile(checkedMetadata(metadata), variable),
    decimals: decimalsOf(metadata, variable),
    mark: metadata.harvest?.decimal ?? '.',
    marks: marksOf(variable),
    meaning: (text) => {
      const value = Number(text);
      const isMark = text !== '' && Number.isInteger(value) && !isOffItsScale(metadata, variable, text);
      return isMark ? (markInWords(variable, value) ?? '') : '';
    },
  }));
}

/** Whether a text is no mark that the variable's scale has, which the check refuses. */
export function isOffItsScale(metadata: TrialMetadata, variable: Variable, text: string): boolean {
  const { parse, scale } = valueColumn(checkedMetadata(metadata), variable, metadata.harvest?.decimal ?? '.');
  const value = parse(text);
  return value !== null && scale?.has(value) === false;
}

/** Judges of one panel have variables of one name. */
function nameOf({ name, panel, judge }: Variable): string {
  return panel === undefined || judge === undefined ? name : `${name} · ${judge}`;
}

function marksOf(variable: Variable): ValueForm['marks'] {
  const values = variable.scale === 'yes or no' ? [1, 0] : Object.keys(variable.marks ?? {}).map(Number);
  if (variable.scale !== 'yes or no') values.sort((a, b) => a - b);
  return values.map((value) => ({ value: String(value), text: markInWords(variable, value) ?? '' }));
}

function decimalsOf(metadata: TrialMetadata, variable: Variable): number {
  if (variable.kind === 'counted') return 0;
  const unit = unitInFile(checkedMetadata(metadata), variable);
  const step = stepOf(checkedMetadata(metadata), variable);
  if (step === null) return variable.kind === 'scored' && variable.resolution === undefined ? 0 : freely;
  // The step is in g where the variable is a weight.
  const inFile = isWeight(unit) && isWeight(variable.unit) ? step / (gramsIn[unit] ?? 1) : step;
  const shortest = String(Number(inFile.toPrecision(12)));
  return shortest.includes('e') ? freely : (shortest.split('.')[1]?.length ?? 0);
}
