import { say } from '../../model/say.ts';
import type { Facts, Layout } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import type { Position } from '../../model/trial.ts';
import { whereOf } from '../grid.ts';
import { positionPlace } from '../places.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'plot-not-one',
  severity: 'error',
  acceptable: false,
  title: 'Plot that is not one unit',
  meaning:
    'Positions that share a plot name were one experimental unit: they had one treatment, and stood in one container and block.',
  example: 'plot "T1-a" has cultivar slate-egret here, but cobalt-wren in line 2',
  check,
};
export default rule;

function check({ layout, metadata }: Facts, report: Report): void {
  if (layout === null || layout.table === null) return;
  const { factors = [], design } = metadata.draft;
  const ids = factors.map(({ id }) => id);
  // In a split plot the positions of a plot share the level of the coarser factor alone.
  const isSplit = design?.arrangement === 'split plot' && design.allotted === 'position';
  const shared = isSplit ? mostShared(layout.positions, ids) : ids;
  const keyOf = ({ treatment }: Position): string =>
    shared.map((id) => `${id} ${treatment[id] ?? ''}`).join(', ');
  const levels = new Map(factors.map((one) => [one.id, new Set(one.levels.map(({ id }) => id))]));
  const isKnown = ({ treatment }: Position): boolean =>
    ids.every((id) => levels.get(id)?.has(treatment[id] ?? '') === true);
  const isRepeated = reportRepeatedNames(layout, report);
  const nameOf = (position: Position): string =>
    isRepeated ? `${placeOf(position)} ${position.plot!}` : position.plot!;
  const first = new Map<string, Position>();
  for (const index of indexesWhere(layout.positions, ({ plot }) => plot !== null)) {
    const position = layout.positions[index]!;
    const plot = position.plot!;
    const before = first.get(nameOf(position));
    if (before === undefined) {
      first.set(nameOf(position), position);
      continue;
    }
    const message = differenceOf(before, position, keyOf, isKnown);
    if (message === null) continue;
    report(rule, {
      file: 'layout.csv',
      place: positionPlace(layout, index, 'plot'),
      found: plot,
      message,
      where: whereOf(position),
    });
  }
}

/** So many names of plots are shown. */
const namesShown = 4;

const placeOf = ({ container, block }: Position): string => JSON.stringify([container, block]);

/** Where most names of plots stand in one container or block and again in another, it is told once. */
function reportRepeatedNames(layout: Layout, report: Report): boolean {
  const first = new Map<string, Position>();
  const again = new Map<string, number>();
  for (const index of indexesWhere(layout.positions, ({ plot }) => plot !== null)) {
    const position = layout.positions[index]!;
    const plot = position.plot!;
    const before = first.get(plot);
    if (before === undefined) first.set(plot, position);
    else if (!again.has(plot) && placeOf(before) !== placeOf(position)) again.set(plot, index);
  }
  const [one, ...others] = again;
  if (one === undefined || others.length === 0 || again.size < first.size / 2) return false;
  const [plot, index] = one;
  const { container, block } = layout.positions[index]!;
  const isOfContainer = first.get(plot)!.container !== container;
  const names = [...again.keys()].slice(0, namesShown).map(showText).join(', ');
  const dots = again.size > namesShown ? ', ...' : '';
  const values = { count: again.size, names: `${names}${dots}` };
  const message = isOfContainer
    ? say(
        '{count} names of plots ({names}) stand in more than one container; a plot has one treatment in one container: give each a name of its own, such as {example}',
        { ...values, example: `${container}-${plot}` },
      )
    : say(
        '{count} names of plots ({names}) stand in more than one block; a plot has one treatment in one block: give each a name of its own, such as {example}',
        { ...values, example: `${block ?? ''}-${plot}` },
      );
  report(rule, { file: 'layout.csv', place: positionPlace(layout, index, 'plot'), found: plot, message });
  return true;
}

/** The factor that the fewest positions change within their plot, so that the plots are its units. */
function mostShared(positions: readonly Position[], factors: readonly string[]): string[] {
  const changes = factors.map((id) => {
    const first = new Map<string, string | undefined>();
    return positions.filter(({ plot, treatment }) => {
      if (plot === null) return false;
      if (!first.has(plot)) first.set(plot, treatment[id]);
      return first.get(plot) !== treatment[id];
    }).length;
  });
  const least = Math.min(...changes);
  return factors.filter((_, index) => changes[index] === least).slice(0, 1);
}

function differenceOf(
  a: Position,
  b: Position,
  keyOf: (position: Position) => string,
  isKnown: (position: Position) => boolean,
): string | null {
  const values = { plot: showText(b.plot ?? ''), line: String(a.line) };
  if (a.container !== b.container) {
    return say(
      'plot {plot} stands in {here} here, but in {there}, as line {line} says; a plot has one treatment in one container, and a name of its own',
      { ...values, here: b.container, there: a.container },
    );
  }
  if (a.block !== b.block) {
    return say(
      'plot {plot} is in block {here} here, but in {there}, as line {line} says; a plot has one treatment in one container, and a name of its own',
      { ...values, here: showText(b.block ?? ''), there: showText(a.block ?? '') },
    );
  }
  // A level that is no level is reported as such.
  if (!isKnown(a) || !isKnown(b)) return null;
  const [had, has] = [keyOf(a), keyOf(b)];
  if (had === has) return null;
  return say(
    'plot {plot} has {here} here, but {there}, as line {line} says; a plot has one treatment in one container, and a name of its own',
    { ...values, here: has, there: had },
  );
}
