import type { Position } from '../../model/trial.ts';
import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { positionPlace } from '../places.ts';
import type { Report, Rule } from '../rule.ts';
import { coarsestUnit } from '../strata.ts';

const rule: Rule = {
  rule: 'rows-of-one-treatment',
  severity: 'warning',
  acceptable: true,
  title: 'Whole rows of one treatment',
  meaning:
    'Every row (or column) of a container holds one treatment, so rows were probably allotted, and a row is one plot. With positions taken for what was allotted, plants of one row would count as replicates, and chance would be made to look small.',
  example:
    'every row of a container holds one cultivar only; if whole rows were allotted, give each its name in the column plot of layout.csv and write allotted: plot',
  check,
};
export default rule;

/** Positions allotted one by one come to lie in whole rows by a chance of this at most where it is asked. */
const chance = 0.05;

function check({ metadata, layout }: Facts, report: Report): void {
  const { design, factors = [] } = metadata.draft;
  if (design?.allotted !== 'position' || layout === null || !layout.treated) return;
  const { positions } = layout;
  const inPositions = factors.filter(
    ({ id }) => coarsestUnit(positions, (treatment) => treatment[id] ?? '') === 'position',
  );
  // Main plots of a split plot may be known by nothing but what they share.
  if (design.arrangement === 'split plot' && inPositions.length > 1) return;
  for (const { id } of inPositions) {
    const line = (['row', 'column'] as const).find((side) => isInLines(positions, id, side));
    if (line === undefined) continue;
    const message =
      line === 'row'
        ? say(
            'every row of a container holds one {factor} only; if whole rows were allotted, give each its name in the column plot of layout.csv and write allotted: plot',
            { factor: id },
          )
        : say(
            'every column of a container holds one {factor} only; if whole columns were allotted, give each its name in the column plot of layout.csv and write allotted: plot',
            { factor: id },
          );
    const place = positionPlace(layout, 0, id) ?? metadata.place(['design', 'allotted']);
    report(rule, { file: layout.table === null ? 'trial.yaml' : 'layout.csv', place, message });
  }
}

/** True where every line holds one level on two positions or more, and that is hardly chance. */
function isInLines(positions: readonly Position[], factor: string, side: 'row' | 'column'): boolean {
  let logOfChance = 0;
  for (const block of Map.groupBy(positions, (one) => one.block).values()) {
    const lines = Map.groupBy(block, (one) => JSON.stringify([one.container, one[side]]));
    for (const members of lines.values()) {
      if (members.length < 2) return false;
      if (members.some(({ treatment }) => treatment[factor] !== members[0]!.treatment[factor])) return false;
    }
    const ofLines = [...lines.values()].map((members) => members[0]!.treatment[factor] ?? '');
    const ofPositions = block.map(({ treatment }) => treatment[factor] ?? '');
    logOfChance += logOfOrders(ofLines) - logOfOrders(ofPositions);
  }
  return logOfChance <= Math.log(chance);
}

/** The logarithm of how many orders there are of some levels, those of like levels counted once. */
function logOfOrders(levels: readonly string[]): number {
  const counts = [...Map.groupBy(levels, (level) => level).values()].map((alike) => alike.length);
  return logOfFactorial(levels.length) - counts.reduce((sum, count) => sum + logOfFactorial(count), 0);
}

function logOfFactorial(n: number): number {
  let sum = 0;
  for (let factor = 2; factor <= n; factor += 1) sum += Math.log(factor);
  return sum;
}
