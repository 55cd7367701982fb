import { say } from '../model/say.ts';
import type { Position } from '../model/trial.ts';
import { areIncompleteBlocks } from './incomplete-blocks.ts';
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
export function blocksFault(
  positions: readonly Position[],
  factors: readonly string[],
  unit: Allotment,
): string | null {
  const blocks = grouped(positions, ({ block }) => block ?? '');
  // Some without a block are reported one by one (plot-missing).
  if (blocks.has('') && blocks.size > 1) return null;
  if (blocks.has(''))
    return say('no block is given; write block: under each container, or a column block in layout.csv');
  if (blocks.size < 2) return say('there is only one block; write unreplicated or completely randomised');
  if (areIncompleteBlocks(blocks, unit)) return null;
  for (const [block, members] of blocks) {
    for (const factor of factors) {
      const here = new Set(members.map(({ treatment }) => treatment[factor]));
      const lacking = positions.find(({ treatment }) => !here.has(treatment[factor]));
      if (lacking) return lacks(block, `${factor} ${lacking.treatment[factor] ?? ''}`);
    }
    const here = new Set(members.map(keyOf));
    const lacking = positions.find((position) => !here.has(keyOf(position)));
    if (lacking && !isBalancedFraction(members, factors)) return lacks(block, keyOf(lacking));
  }
  return null;
}

const lacks = (block: string, treatment: string): string =>
  say('block {block} lacks {treatment}', { block: showText(block), treatment });

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
    return say('{treatments} treatments need {needed} units, and there are {units}', {
      treatments,
      needed: treatments * treatments,
      units,
    });
  }
  if (unit !== 'position') {
    const counts = [...tally(unitKeys(positions, unit, treatmentInWords)).values()];
    return counts.every((count) => count === counts[0])
      ? null
      : say('the treatments do not occur equally often');
  }
  for (const line of ['row', 'column'] as const) {
    for (const members of grouped(
      positions,
      (one) => `${one.container} ${line} ${String(one[line])}`,
    ).values()) {
      const twice = [...tally(members.map(keyOf))].find(([, count]) => count > 1);
      const [one] = members;
      if (twice && one) {
        const values = {
          number: one[line],
          container: one.container,
          treatment: twice[0],
          count: twice[1],
        };
        return line === 'row'
          ? say('row {number} of {container} has {treatment} {count} times', values)
          : say('column {number} of {container} has {treatment} {count} times', values);
      }
      if (members.length !== treatments && one) {
        const values = {
          number: one[line],
          container: one.container,
          count: members.length,
          treatments,
        };
        return line === 'row'
          ? say('row {number} of {container} has {count} positions, not {treatments}', values)
          : say('column {number} of {container} has {count} positions, not {treatments}', values);
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
  if (factors.length < 2) return say('it has one factor; a split plot has two, on units of different size');
  // Within blocks a main plot may be known by nothing but the treatment that its positions share.
  const sameUnits = new Set(units).size === 1;
  const inPlots = positions.some(({ plot }) => plot !== null);
  return sameUnits && !inPlots && units[0] === 'container'
    ? say('all its factors were allotted to containers')
    : null;
}

/** How a layout is replicated after all, or null. */
export function unreplicatedFault(positions: readonly Position[], unit: Allotment): string | null {
  const counts = [...tally(unitKeys(positions, unit, treatmentInWords)).values()];
  if (counts.some((count) => count < 2)) return null;
  const values = { least: Math.min(...counts) };
  if (unit === 'container')
    return say(
      'every treatment has {least} or more containers; write completely randomised or randomised blocks',
      values,
    );
  return unit === 'plot'
    ? say(
        'every treatment has {least} or more plots; write completely randomised or randomised blocks',
        values,
      )
    : say(
        'every treatment has {least} or more positions; write completely randomised or randomised blocks',
        values,
      );
}
