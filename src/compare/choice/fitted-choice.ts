import type { Choice } from './choice.ts';
import type { Offered, OfferedValue } from './offered.ts';

/**
 * A choice without what its comparison does not have: an address may be old, or mistyped. A list that names
 * nothing known is no choice; one that names all is none either.
 *
 * @param without cultivars to leave out, where the choice is said by them
 * @returns the choice, and what was not known, as it was written
 */
export function fittedChoice(
  choice: Choice,
  without: readonly string[],
  there: Offered,
): { choice: Choice; unknown: string[] } {
  const unknown: string[] = [];
  const list = (values: readonly string[] | null, all: readonly OfferedValue[]): readonly string[] | null => {
    if (values === null) return null;
    const known = all.map(({ value }) => value);
    unknown.push(...values.filter((value) => !known.includes(value)));
    const kept = known.filter((value) => values.includes(value));
    return kept.length === known.length || (kept.length === 0 && values.length > 0) ? null : kept;
  };
  const bound = (year: number | null, end: number | undefined) => (year === end ? null : year);
  const leftOut = list(without, there.cultivars) ?? [];
  const rest = there.cultivars.map(({ value }) => value).filter((value) => !leftOut.includes(value));
  const held: Choice['held'] = Object.fromEntries(
    Object.entries(choice.held).filter(([key, value]) => {
      const values = there.conditions.find(({ condition }) => condition.key === key)?.values ?? [];
      const known = values.some((each) => each.value === value);
      if (!known) unknown.push(value);
      return known;
    }),
  );
  const { against } = choice;
  const target = against === null || against === 'pairs' ? null : against.cultivar;
  const targetKnown = there.cultivars.some(({ value }) => value === target);
  if (target !== null && !targetKnown) unknown.push(target);
  return {
    choice: {
      ...choice,
      cultivars: list(choice.cultivars, there.cultivars) ?? (leftOut.length === 0 ? null : rest),
      from: bound(choice.from, there.years[0]),
      to: bound(choice.to, there.years.at(-1)),
      seasons: list(choice.seasons, there.seasons),
      settings: list(choice.settings, there.settings),
      held,
      against: target !== null && !targetKnown ? null : against,
    },
    unknown,
  };
}
