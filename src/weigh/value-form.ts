import { stepOf } from '../check/rules/off-the-scale.ts';
import { unitInFile } from '../check/harvest-columns.ts';
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
}

/** The decimals that are offered where no resolution says how many. */
const freely = 3;

/** How the values of each variable are typed, the primary one first. */
export function valueForms(metadata: TrialMetadata): ValueForm[] {
  return metadata.variables.map((variable) => ({
    id: variable.id,
    name: variable.name,
    unit: unitInFile(checkedMetadata(metadata), variable),
    decimals: decimalsOf(metadata, variable),
    mark: metadata.harvest?.decimal ?? '.',
  }));
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
