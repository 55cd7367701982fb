import type { Position } from '../model/trial.ts';
import { showText } from './show-value.ts';
import { unitCount, unitKeys, type Allotment } from './strata.ts';
import { treatmentInWords } from './treatment-words.ts';

const keyOf = ({ treatment }: Position): string => treatmentInWords(treatment);

/** Counts how often each key occurs. */
function tally(keys: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

function grouped(
  positions: readonly Position[],
  groupOf: (position: Position) => string,
): Map<string, Position[]> {
  const groups = new Map<string, Position[]>();
  for (const position of positions) {
    const group = groupOf(position);
    const list = groups.get(group);
    if (list === undefined) groups.set(group, [position]);
    else list.push(position);
  }
  return groups;
}

/** How a layout is not one of randomised blocks, or null. */
export function blocksFault(positions: readonly Position[], factors: readonly string[]): string | null {
  const blocks = grouped(positions, ({ block }) => block ?? '');
  // Some without a block are reported one by one (plot-missing).
  if (blocks.has('') && blocks.size > 1) return null;
  if (blocks.has(''))
    return 'no block is given; write block: under each container, or a column block in layout.csv';
  if (blocks.size < 2) return 'there is only one block; write unreplicated or completely randomised';
  for (const [block, members] of blocks) {
    for (const factor of factors) {
      const here = new Set(members.map(({ treatment }) => treatment[factor]));
      const lacking = positions.find(({ treatment }) => !here.has(treatment[factor]));
      if (lacking) return `block ${showText(block)} lacks ${factor} ${lacking.treatment[factor] ?? ''}`;
    }
    const here = new Set(members.map(keyOf));
    const lacking = positions.find((position) => !here.has(keyOf(position)));
    if (lacking && !isBalancedFraction(members, factors))
      return `block ${showText(block)} lacks ${keyOf(lacking)}`;
  }
  return null;
}

/** A block of a factorial may hold a chosen fraction of the combinations, each level of a factor as often as the others. */
function isBalancedFraction(members: readonly Position[], factors: readonly string[]): boolean {
  return factors.every((factor) => {
    const counts = [...tally(members.map(({ treatment }) => treatment[factor] ?? '')).values()];
    return counts.every((count) => count === counts[0]);
  });
}

/** How a layout is not a Latin square (or several, one in each container), or null. */
export function latinSquareFault(positions: readonly Position[], unit: Allotment): string | null {
  const treatments = new Set(positions.map(keyOf)).size;
  const units = unitCount(positions, unit);
  if (units % (treatments * treatments) !== 0) {
    return `${String(treatments)} treatments need ${String(treatments * treatments)} units, and there are ${String(units)}`;
  }
  if (unit !== 'position') {
    const counts = [...tally(unitKeys(positions, unit, treatmentInWords)).values()];
    return counts.every((count) => count === counts[0]) ? null : 'the treatments do not occur equally often';
  }
  for (const line of ['row', 'column'] as const) {
    for (const members of grouped(
      positions,
      (one) => `${one.container} ${line} ${String(one[line])}`,
    ).values()) {
      const twice = [...tally(members.map(keyOf))].find(([, count]) => count > 1);
      const [one] = members;
      if (twice && one)
        return `${line} ${String(one[line])} of ${one.container} has ${twice[0]} ${String(twice[1])} times`;
      if (members.length !== treatments && one) {
        return `${line} ${String(one[line])} of ${one.container} has ${String(members.length)} positions, not ${String(treatments)}`;
      }
    }
  }
  return null;
}

/** How a layout is not a split plot, or null. */
export function splitPlotFault(
  factors: readonly string[],
  units: readonly Allotment[],
  positions: readonly Position[],
): string | null {
  if (factors.length < 2) return 'it has one factor; a split plot has two, on units of different size';
  // Within blocks a main plot may be known by nothing but the treatment that its positions share.
  const sameUnits = new Set(units).size === 1;
  const inPlots = positions.some(({ plot }) => plot !== null);
  return sameUnits && !inPlots && units[0] === 'container'
    ? 'all its factors were allotted to containers'
    : null;
}

/** How a layout is replicated after all, or null. */
export function unreplicatedFault(positions: readonly Position[], unit: Allotment): string | null {
  const counts = [...tally(unitKeys(positions, unit, treatmentInWords)).values()];
  if (counts.some((count) => count < 2)) return null;
  return `every treatment has ${String(Math.min(...counts))} or more ${unit}s; write completely randomised or randomised blocks`;
}
