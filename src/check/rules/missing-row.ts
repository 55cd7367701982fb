import { say } from '../../model/say.ts';
import type { Position } from '../../model/trial.ts';
import type { Facts, Harvest } from '../facts.ts';
import type { Finding, Report, Rule } from '../rule.ts';
import { positionInWords, whereOf } from '../grid.ts';
import { recordsByPosition } from '../records-by-position.ts';

const rule: Rule = {
  rule: 'missing-row',
  severity: 'error',
  acceptable: false,
  title: 'Plant without a row',
  meaning:
    'Once a trial is finished, every plant that was set has a row for each cut, and be it only to say that it died. A plant passed over could be the one that matters.',
  example: 'T1 row 2 column 3 has no row at cut 1; write its weight, or what became of it',
  check,
};
export default rule;

function check({ harvest, layout, metadata }: Facts, report: Report): void {
  if (metadata.draft.status !== 'finished' || harvest === null || layout === null || !harvest.complete)
    return;
  if (harvest.records.length === 0 && harvest.unsure.size > 0) return;
  const cuts = metadata.draft.dates?.cuts?.length ?? 1;
  // Each of them is told of already: its row names another place, or a plant that has one.
  const lacked = plantsLacking(harvest, layout.positions, cuts, Infinity).length;
  if (lacked === 0 || lacked <= harvest.unplaced + rowsTooMany(harvest)) return;
  const found: Finding[] = [];
  for (let cut = 1; cut <= cuts; cut += 1) {
    const { withRows, lacking } = lookForRows(harvest, layout.positions, cut);
    const saidOf = new Set<string>();
    for (const [index, plants] of lacking) {
      const position = layout.positions[index]!;
      const { container } = position;
      if (harvest.unsure.has(container) || saidOf.has(container)) continue;
      const isWhole = !withRows.has(container);
      if (isWhole) saidOf.add(container);
      for (const plant of isWhole ? [null] : plants) {
        const what = isWhole ? container : plantInWords(position, plant);
        const message = say(
          '{what} has no row at cut {cut}; write the weight, or the status that says what became of it',
          { what, cut },
        );
        found.push({
          file: 'harvest.csv',
          expected: what,
          message,
          where: isWhole ? container : whereOf(position),
        });
      }
    }
  }
  // A part of the file that was lost is one slip.
  const isPart = found.length >= severalLost && lacked >= layout.positions.length * cuts * ofPart;
  for (const finding of isPart ? inOne(found) : found) report(rule, finding);
}

/** From so many on, and this share of all plants, rows that are missing were lost together. */
const severalLost = 3;
const ofPart = 0.25;
/** Of those so many are named. */
const namedOfPart = 8;

function inOne([first, ...others]: readonly Finding[]): Finding[] {
  if (first === undefined) return [];
  const named = others.slice(0, namedOfPart).map(({ expected }) => expected ?? '');
  const more = others.length > namedOfPart ? ', ...' : '';
  const values = { message: first.message, count: others.length, named: `${named.join(', ')}${more}` };
  return [{ ...first, message: say('{message} (so too {count} more: {named})', values), where: null }];
}

function plantInWords(position: Position, plant: number | null): string {
  const place = positionInWords(position);
  return plant === null ? place : say('{place} plant {plant}', { place, plant });
}

/** In words, the plants without a row at a cut, in containers of which every row could be placed; at most so many. */
export function plantsLacking(
  harvest: Harvest,
  positions: readonly Position[],
  cuts: number,
  most: number,
): string[] {
  const lacking: string[] = [];
  for (let cut = 1; cut <= cuts; cut += 1) {
    for (const [index, plants] of lookForRows(harvest, positions, cut).lacking) {
      const position = positions[index]!;
      if (harvest.unsure.has(position.container)) continue;
      for (const plant of plants) {
        const place = plantInWords(position, plant);
        lacking.push(cuts === 1 ? place : say('{place} at cut {cut}', { place, cut }));
        if (lacking.length > most) return lacking;
      }
    }
  }
  return lacking;
}

/** How many rows stand for a plant that has a row at that cut already. */
function rowsTooMany(harvest: Harvest): number {
  const seen = new Set<string>();
  harvest.records.forEach(({ cut, plant }, index) => {
    seen.add(`${String(harvest.positionOf[index])} ${String(cut)} ${String(plant)}`);
  });
  return harvest.records.length - seen.size;
}

/** The containers that have rows at a cut, and for each position that lacks rows the plants without one; null is the pot. */
export function lookForRows(
  harvest: Harvest,
  positions: readonly Position[],
  cut: number,
): { withRows: Set<string>; lacking: Map<number, (number | null)[]> } {
  const withRows = new Set<string>();
  const hasRow = new Uint8Array(positions.length);
  harvest.records.forEach((record, index) => {
    if (record.cut !== cut) return;
    withRows.add(record.container);
    hasRow[harvest.positionOf[index]!] = 1;
  });
  const lacking = new Map<number, (number | null)[]>();
  positions.forEach(({ plants }, index) => {
    if (hasRow[index] === 0) lacking.set(index, [null]);
    else if (plants > 1) {
      const without = lackingPlants(harvest, index, cut, plants);
      if (without.length > 0) lacking.set(index, without);
    }
  });
  return { withRows, lacking };
}

function lackingPlants(harvest: Harvest, position: number, cut: number, plants: number): number[] {
  const records = recordsByPosition(harvest)
    .at(position)
    .map((index) => harvest.records[index]!);
  const there = new Set(records.filter((one) => one.cut === cut).map(({ plant }) => plant));
  // A row without a plant number is the pot weighed whole.
  if (there.has(null)) return [];
  const numbers = Array.from({ length: plants }, (_, index) => index + 1);
  return numbers.filter((plant) => !there.has(plant));
}
