import { type Measure, measureNames } from '../../compute/tables/measures.ts';
import type { TreatmentDescription } from '../../model/findings.ts';
import { say } from '../../model/say.ts';
import type { Treatment } from '../../model/trial.ts';
import { written } from '../asked-treatment.ts';
import type { Fact } from './fact.ts';
import { type Cut, cutAttribute, ofTwo, per } from './fact-words.ts';

const measures = Object.keys(measureNames) as Measure[];

/** Differences of plain means, in weight and in percent of the other, whether they were tested or not. */
export function factsOfDifferences(
  treatments: readonly TreatmentDescription[],
  cut: Cut,
  name: (treatment: Treatment) => string,
): Fact[] {
  return measures.flatMap((measure) => {
    const means = treatments.flatMap((each) => {
      const mean = each[measure]?.mean ?? null;
      return mean === null ? [] : [{ treatment: each.treatment, mean }];
    });
    return means.flatMap((a, index) =>
      means.slice(index + 1).flatMap((b): Fact[] => {
        const of = (what: string): string =>
          ofTwo(what, { measure, cut }, name(a.treatment), name(b.treatment));
        const component = `<Difference a="${written(a.treatment)}" b="${written(b.treatment)}" per="${per[measure]}"${cutAttribute(cut)} />`;
        const about = {
          kind: 'difference' as const,
          measure,
          treatments: [a.treatment, b.treatment],
          component,
        };
        // More than the smaller of the two, and less than the larger.
        const percents = [b.mean, a.mean].flatMap((base) =>
          base > 0
            ? [
                {
                  value: (100 * (a.mean - b.mean)) / base,
                  direction: base === Math.min(a.mean, b.mean) ? ('more' as const) : ('less' as const),
                },
              ]
            : [],
        );
        return [
          { ...about, value: a.mean - b.mean, dimension: 'g', words: () => of(say('the difference')) },
          ...ratiosOf(a.mean, b.mean).map((value): Fact => ({
            ...about,
            value,
            dimension: 'times',
            words: () => of(say('the ratio')),
            component: null,
          })),
          ...percents.map((percent): Fact => ({
            ...about,
            ...percent,
            dimension: '%',
            words: () => of(say('the difference in percent')),
            component: null,
          })),
        ];
      }),
    );
  });
}

/** How many times as much each of two gave as the other. */
function ratiosOf(a: number, b: number): readonly number[] {
  return a > 0 && b > 0 ? [a / b, b / a] : [];
}
