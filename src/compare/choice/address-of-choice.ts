import { type Choice, type RowOrder, wholeChoice } from './choice.ts';
import { type ConditionKey, conditions } from './conditions.ts';

/** A crop with its measures, the first of each being what its page shows first. */
export interface ChoosableCrop {
  id: string;
  measures: readonly string[];
}

const orders: readonly RowOrder[] = ['mean', 'name', 'trials'];
/** More values than any site has, so that an address cannot make a page without end. */
const mostValues = 500;
const longest = 200;

/**
 * The choice as the query of an address, in readable names; what is as it is without a choice is left out, so
 * that an address without a query is the page as published.
 *
 * @param crops as the page has them, the first being shown without a choice
 * @param all every cultivar of the comparison: where most are chosen, those left out are written
 */
export function toAddress(
  choice: Choice,
  crops: readonly ChoosableCrop[],
  all: readonly string[] = [],
): string {
  const query = new URLSearchParams();
  const [first] = crops;
  if (choice.crop !== first?.id) query.set('crop', choice.crop);
  const own = crops.find(({ id }) => id === choice.crop)?.measures[0];
  if (choice.measure !== own) query.set('measure', choice.measure);
  if (choice.cultivars !== null) {
    const without = all.filter((cultivar) => !choice.cultivars!.includes(cultivar));
    const fewer = without.length > 0 && without.length < choice.cultivars.length;
    // An empty list is written as one empty value: none is not all.
    const values = choice.cultivars.length === 0 ? [''] : fewer ? without : choice.cultivars;
    for (const value of values) query.append(fewer ? 'without' : 'cultivar', value);
  }
  if (choice.from !== null) query.set('from', String(choice.from));
  if (choice.to !== null) query.set('to', String(choice.to));
  for (const [key, values] of [
    ['season', choice.seasons],
    ['setting', choice.settings],
  ] as const) {
    for (const value of values?.length === 0 ? [''] : (values ?? [])) query.append(key, value);
  }
  for (const { key } of conditions) if (choice.held[key] !== undefined) query.set(key, choice.held[key]);
  if (choice.onlyReplicated) query.set('replicated', 'only');
  if (choice.asSample) query.set('trials', 'sample');
  if (choice.weighted) query.set('weights', 'standard-errors');
  if (choice.order !== 'mean') query.set('order', choice.order);
  if (choice.against !== null)
    query.set('against', choice.against === 'pairs' ? 'every-pair' : choice.against.cultivar);
  if (choice.everything) query.set('show', 'everything');
  return query.toString();
}

/**
 * The choice that an address holds. A crop or measure that the page does not have is read as the one shown first.
 * What a comparison does not have (a cultivar, a setting) is found by `fittedChoice`, once its data are there.
 *
 * @param without the cultivars that the address leaves out, to be taken from all of the comparison
 */
export function fromAddress(
  search: string,
  crops: readonly ChoosableCrop[],
): { choice: Choice; without: readonly string[]; unknown: readonly string[] } {
  const query = new URLSearchParams(search);
  const one = (key: string) => query.get(key)?.slice(0, longest) ?? null;
  const several = (key: string) => {
    const values = query.getAll(key).slice(0, mostValues);
    return values.length === 0 ? null : values.filter((value) => value !== '');
  };
  const year = (key: string) => (/^\d{4}$/.test(one(key) ?? '') ? Number(one(key)) : null);
  const crop = crops.find(({ id }) => id === one('crop')) ?? crops[0]!;
  const measure = crop.measures.find((each) => each === one('measure'));
  const unknown = [
    ...(one('crop') !== null && crop.id !== one('crop') ? [one('crop')!] : []),
    ...(one('measure') !== null && measure === undefined ? [one('measure')!] : []),
  ];
  const held = Object.fromEntries(
    conditions.flatMap(({ key }) => (one(key) === null ? [] : [[key, one(key)]])),
  );
  const against = one('against');
  return {
    choice: {
      ...wholeChoice(crop.id, measure ?? crop.measures[0]!),
      cultivars: several('cultivar'),
      from: year('from'),
      to: year('to'),
      seasons: several('season'),
      settings: several('setting'),
      held: held as Partial<Record<ConditionKey, string>>,
      onlyReplicated: one('replicated') === 'only',
      asSample: one('trials') === 'sample',
      weighted: one('weights') === 'standard-errors',
      order: orders.find((each) => each === one('order')) ?? 'mean',
      against: against === null ? null : against === 'every-pair' ? 'pairs' : { cultivar: against },
      everything: one('show') === 'everything',
    },
    without: several('without') ?? [],
    unknown,
  };
}
