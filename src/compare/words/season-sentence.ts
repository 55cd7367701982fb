import { formatQuantity } from '../../compute/format/format-quantity.ts';
import { listed, type Words } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';

const alpha = 0.05;

/** The answer in a sentence: who led and by how much, the interval, and what it rests on; or why there is none. */
export function seasonSentence(entry: Seasons, name: (cultivar: string) => string): Words {
  if (entry.verdict === 'not compared')
    return [`No cultivars can be compared across seasons. ${entry.reason}`];
  const digits = entry.unit === 'kg/m2' ? 2 : entry.unit === 'g' ? 0 : 1;
  const amount = (value: number) => formatQuantity(value, entry.unit, digits);
  const tested = entry.differences.filter(({ p_adjusted }) => p_adjusted !== null);
  const widest = [...tested].sort((a, b) => Math.abs(b.estimate) - Math.abs(a.estimate));
  const first = widest.find(({ p_adjusted }) => p_adjusted! < alpha) ?? widest[0]!;
  const [more, less, lower, upper] =
    first.estimate > 0
      ? [first.a, first.b, first.lower!, first.upper!]
      : [first.b, first.a, -first.upper!, -first.lower!];
  const linking = entry.trials.filter(({ cultivars }) => cultivars > 1).length;
  const basis = ` This rests on ${linking} trials that had cultivars in common.`;
  const alone = entry.linked_sets.filter((set) => set.length === 1).flat();
  const refused =
    alone.length === 0
      ? ''
      : ` ${listed(alone.map(name))} met no other cultivar in any trial and is compared with none.`;
  const effect: Words = [
    amount(Math.abs(first.estimate)),
    ' (95% interval ',
    amount(lower),
    ' to ',
    amount(upper),
    ')',
  ];
  return first.p_adjusted! < alpha
    ? [`Over the trials ${name(more)} gave more than ${name(less)} by `, ...effect, `.${basis}${refused}`]
    : [
        `Over the trials no two cultivars were told apart: the widest difference, ${name(more)} over ${name(less)}, was `,
        ...effect,
        `.${basis}${refused}`,
      ];
}
