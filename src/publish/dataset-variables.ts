import type { TrialMetadata, Variable } from '../model/trial.ts';
import { publishedUnit } from './published-unit.ts';
import { unitCodes, type UnitCodes } from './unit-codes.ts';

/** A variable as the metadata files name it. */
export interface DatasetVariable {
  id: string;
  name: string;
  of: Variable['of'];
  kind: Variable['kind'];
  /** How it was measured, in a sentence. */
  method: string;
  /** null for a plain number. */
  unit: UnitCodes | null;
  /** The trait in the Plant Trait Ontology, null where trial.yaml names none. */
  trait: { id: string; address: string } | null;
}

function methodOf(variable: Variable): string {
  const step =
    variable.resolution === undefined
      ? ''
      : ` to ${String(variable.resolution)} ${variable.unit ?? ''}`.trimEnd();
  const words = `${variable.kind} on each ${variable.of}${step}`;
  const sentence = `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  return variable.note === undefined ? sentence : `${sentence} ${variable.note}`;
}

/** The variables of a trial, the primary one first. */
export function datasetVariables(metadata: TrialMetadata): DatasetVariable[] {
  return metadata.variables.map((variable) => ({
    id: variable.id,
    name: variable.name,
    of: variable.of,
    kind: variable.kind,
    method: methodOf(variable),
    unit: unitCodes(publishedUnit(variable)),
    trait:
      variable.trait === undefined
        ? null
        : {
            id: variable.trait,
            address: `http://purl.obolibrary.org/obo/${variable.trait.replace(':', '_')}`,
          },
  }));
}
