import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import type { Weighing } from '../weighings.ts';
import { chanceOfTie, weighingsOf } from '../weighings.ts';
import { recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'copied-weights',
  severity: 'warning',
  acceptable: true,
  title: 'Copy of other weights',
  meaning:
    'Two containers, or two rows of one, whose weights are the same in the same order, or in the opposite one, are more than chance explains: one was copied from the other.',
  example: 'the weights of T2 are those of T1 in the same order',
  check,
};
export default rule;

/** Copies this likely by chance are let pass. */
const unlikely = 0.001;
const fewest = 3;

function check(facts: Facts, report: Report): void {
  const weighings = weighingsOf(facts);
  if (weighings === null) return;
  const { harvest, variable, all } = weighings;
  const tie = chanceOfTie(all.map(({ weight }) => weight));
  const inOrder = [...all].sort((a, b) => comparePlaces(a.record, b.record));
  const copied = new Set<string>();
  const look = (nameOf: (one: Weighing) => string): void => {
    const groups = [...Map.groupBy(inOrder, nameOf)];
    const pairs = (groups.length * (groups.length - 1)) / 2;
    const seen = new Map<string, string>();
    const isFirstLook = copied.size === 0;
    for (const [name, members] of groups) {
      const weights = members.map(({ weight }) => weight);
      const alike = weights.every((weight) => weight === weights[0]);
      const isChance = pairs * tie ** weights.length > unlikely;
      const { container } = members[0]!.record;
      if (weights.length < fewest || alike || isChance || (!isFirstLook && copied.has(container))) continue;
      const forward = seen.get(weights.join(' '));
      const backward = seen.get(weights.toReversed().join(' '));
      const first = forward ?? backward;
      if (first === undefined) seen.set(weights.join(' '), name);
      else {
        copied.add(container);
        const order = forward === undefined ? 'in the opposite order' : 'in the same order';
        const message = `the ${String(weights.length)} weights of ${name} are those of ${first} ${order}; was one copied from the other?`;
        const place = recordPlace(harvest, members[0]!.index, variable.id);
        report(rule, {
          file: 'harvest.csv',
          place,
          found: name,
          message,
          where: container,
        });
      }
    }
  };
  look(({ record }) => `${record.container} at cut ${String(record.cut)}`);
  look(({ record }) => `${record.container} row ${String(record.row)} at cut ${String(record.cut)}`);
}

type Placed = Weighing['record'];

function comparePlaces(a: Placed, b: Placed): number {
  return a.row - b.row || a.column - b.column || (a.plant ?? 0) - (b.plant ?? 0);
}
