import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { chanceOfTie, groupOf, weighingsOf, type Weighing } from '../weighings.ts';
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
  if (weighings === null || weighings.all.length === 0) return;
  const { harvest, variable, all } = weighings;
  const tie = chanceOfTie(all);
  const byContainer = new Map<string, Map<number, Weighing[]>>();
  for (const one of all) groupOf(byContainer, one.record.container, one.record.cut).push(one);
  const containers = [...byContainer].flatMap(([container, cuts]) =>
    [...cuts].map(([cut, members]) => ({
      name: say('{container} at cut {cut}', { container, cut }),
      members: inPlaces(members),
    })),
  );
  const reportAll = (copies: readonly Copy[]): Set<string> => {
    for (const { of, from, order } of copies) {
      const { index, record } = of.members[0]!;
      const values = { count: of.members.length, copy: of.name, original: from.name };
      const message =
        order === 'same'
          ? say(
              'the {count} weights of {copy} are those of {original} in the same order; was one copied from the other?',
              values,
            )
          : say(
              'the {count} weights of {copy} are those of {original} in the opposite order; was one copied from the other?',
              values,
            );
      const place = recordPlace(harvest, index, variable.id);
      report(rule, { file: 'harvest.csv', place, found: of.name, message, where: record.container });
    }
    return new Set(copies.map(({ of }) => of.name));
  };
  const copied = reportAll(copiesAmong(containers, tie));
  // Rows of a container that is a copy altogether are not said again.
  const rows = containers.filter(({ name }) => !copied.has(name)).flatMap(({ members }) => rowsOf(members));
  reportAll(copiesAmong(rows, tie));
}

/** Weights in the order of their places, and what they are called. */
interface Run {
  name: string;
  members: readonly Weighing[];
}

interface Copy {
  of: Run;
  from: Run;
  order: 'same' | 'opposite';
}

function inPlaces(members: readonly Weighing[]): Weighing[] {
  return [...members].sort(
    ({ record: a }, { record: b }) => a.row - b.row || a.column - b.column || (a.plant ?? 0) - (b.plant ?? 0),
  );
}

function rowsOf(members: readonly Weighing[]): Run[] {
  const rows = new Map<number, Weighing[]>();
  for (const one of members) {
    const list = rows.get(one.record.row);
    if (list === undefined) rows.set(one.record.row, [one]);
    else list.push(one);
  }
  return [...rows].map(([row, list]) => {
    const { container, cut } = list[0]!.record;
    return { name: say('{container} row {row} at cut {cut}', { container, row, cut }), members: list };
  });
}

/** The runs that repeat an earlier one, as chance would hardly make them. */
function copiesAmong(runs: readonly Run[], tie: number): Copy[] {
  const pairs = (runs.length * (runs.length - 1)) / 2;
  const bySum = new Map<string, Run[]>();
  const copies: Copy[] = [];
  for (const run of runs) {
    const { members } = run;
    const isChance = pairs * tie ** members.length > unlikely;
    if (members.length < fewest || isChance || members.every(({ weight }) => weight === members[0]!.weight))
      continue;
    // Copies have the same sum; only runs of one sum and length are compared weight by weight.
    const sum = `${String(members.length)} ${members.reduce((total, { weight }) => total + weight, 0).toPrecision(12)}`;
    const alike = bySum.get(sum);
    const same = alike?.find((one) => members.every(({ weight }, at) => weight === one.members[at]!.weight));
    const opposite = alike?.find((one) =>
      members.every(({ weight }, at) => weight === one.members.at(-1 - at)!.weight),
    );
    if (same !== undefined) copies.push({ of: run, from: same, order: 'same' });
    else if (opposite !== undefined) copies.push({ of: run, from: opposite, order: 'opposite' });
    else if (alike === undefined) bySum.set(sum, [run]);
    else alike.push(run);
  }
  return copies;
}
