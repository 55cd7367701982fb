import type { Choice, RowOrder } from '../../compare/choice/choice.ts';
import { conditions } from '../../compare/choice/conditions.ts';
import type { Offered, OfferedValue } from '../../compare/choice/offered.ts';

/** What the form's fields say, once those of the crop and measure in it are there. */
export function readChoices(form: HTMLFormElement, there: Offered): Choice {
  const data = new FormData(form);
  const one = (name: string) => String(data.get(name) ?? '');
  const several = (name: string, all: readonly OfferedValue[]): readonly string[] | null => {
    // A choice between fewer than two is not offered.
    if (form.querySelector(`input[name="${name}"]`) === null) return null;
    const chosen = data.getAll(name).map(String);
    return chosen.length === all.length ? null : chosen;
  };
  const bound = (name: string, end: number | undefined) => {
    const year = Number(one(name));
    return year === 0 || year === end ? null : year;
  };
  const held = Object.fromEntries(
    conditions.flatMap(({ key }) => (one(key) === '' ? [] : [[key, one(key)] as const])),
  );
  const against = one('against');
  return {
    crop: one('crop'),
    measure: one('measure'),
    cultivars: several('cultivar', there.cultivars),
    from: bound('from', there.years[0]),
    to: bound('to', there.years.at(-1)),
    seasons: several('season', there.seasons),
    settings: several('setting', there.settings),
    held,
    onlyReplicated: one('replicated') === 'only',
    asSample: one('trials') === 'sample',
    weighted: one('weights') !== '',
    order: one('order') as RowOrder,
    against:
      against === '' ? null : against === 'pairs' ? 'pairs' : { cultivar: against.replace(/^cultivar:/, '') },
    everything: one('show') !== '',
  };
}
