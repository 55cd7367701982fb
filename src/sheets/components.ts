import type { SheetComponent } from './component.ts';
import { caution } from './components/caution.ts';
import { cautions } from './components/cautions.ts';
import { citation } from './components/citation.ts';
import { day } from './components/day.ts';
import { design } from './components/design.ts';
import { difference } from './components/difference.ts';
import { finding } from './components/finding.ts';
import { photo } from './components/photo.ts';
import { positionMap } from './components/position-map.ts';
import { quoted } from './components/quoted.ts';
import { recipe } from './components/recipe.ts';
import { seasonComparison } from './components/season-comparison.ts';
import { timeLine } from './components/time-line.ts';
import { treatments } from './components/treatments.ts';
import { value } from './components/value.ts';
import { water } from './components/water.ts';
import { weightsByTreatment } from './components/weights-by-treatment.ts';

/** Every component that a fact sheet may have, in the order in which the page of components shows them. */
export const sheetComponents: readonly SheetComponent[] = [
  value,
  difference,
  day,
  citation,
  quoted,
  finding,
  design,
  treatments,
  weightsByTreatment,
  positionMap,
  seasonComparison,
  timeLine,
  recipe,
  water,
  photo,
  caution,
  cautions,
];

/** A component by its name; null where there is none of it. */
export function componentNamed(name: string): SheetComponent | null {
  return sheetComponents.find((each) => each.name === name) ?? null;
}
