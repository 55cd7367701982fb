import type { Inference } from '../../model/findings.ts';
import { say } from '../../model/say.ts';
import type { Treatment } from '../../model/trial.ts';
import { written } from '../asked-treatment.ts';
import type { Fact } from './fact.ts';
import { cutAttribute, number, ofAll, ofOne, ofTwo, per } from './fact-words.ts';

/** Adjusted means, differences and what else an analysis gives. */
export function factsOfInference(inference: Inference, name: (treatment: Treatment) => string): Fact[] {
  const { measure, cut } = inference;
  const g = { dimension: 'g' as const, measure };
  const asked = ` per="${per[measure]}"${cutAttribute(cut)}`;
  const means = inference.means.flatMap(({ treatment, mean, lower, upper, se }): Fact[] => {
    const of = (what: string): string => ofOne(what, inference, name(treatment));
    const about = { ...g, treatments: [treatment], component: null };
    return [
      ...number(mean, {
        ...about,
        kind: 'mean',
        words: () => of(say('the adjusted mean')),
        component: `<Value of="adjusted_mean" where="${written(treatment)}"${asked} />`,
      }),
      ...number(lower, { ...about, kind: 'limits', words: () => of(say('the lower limit of the mean')) }),
      ...number(upper, { ...about, kind: 'limits', words: () => of(say('the upper limit of the mean')) }),
      ...number(se, { ...about, kind: 'spread', words: () => of(say('the standard error of the mean')) }),
    ];
  });
  const pairs = inference.differences.flatMap(({ a, b, estimate, lower, upper, se }): Fact[] => {
    const of = (what: string): string => ofTwo(what, inference, name(a), name(b));
    const about = { ...g, treatments: [a, b], component: null };
    const component = `<Difference a="${written(a)}" b="${written(b)}"${asked} />`;
    return [
      ...number(estimate, {
        ...about,
        kind: 'difference',
        words: () => of(say('the difference')),
        component,
      }),
      ...number(lower, {
        ...about,
        kind: 'limits',
        words: () => of(say('a limit of the difference')),
        component,
      }),
      ...number(upper, {
        ...about,
        kind: 'limits',
        words: () => of(say('a limit of the difference')),
        component,
      }),
      ...number(se, {
        ...about,
        kind: 'spread',
        words: () => of(say('the standard error of the difference')),
      }),
    ];
  });
  const checks = inference.against_check.flatMap(
    ({ treatment, estimate, lower, upper, percent_of_check: percent }): Fact[] => {
      const of = (what: string): string => ofOne(what, inference, name(treatment));
      const about = { ...g, treatments: [treatment], component: null };
      const component = `<Value of="percent_of_check" where="${written(treatment)}"${asked} />`;
      return [
        ...number(estimate, {
          ...about,
          kind: 'difference',
          words: () => of(say('the difference from the check')),
        }),
        ...number(lower, {
          ...about,
          kind: 'limits',
          words: () => of(say('a limit of the difference from the check')),
        }),
        ...number(upper, {
          ...about,
          kind: 'limits',
          words: () => of(say('a limit of the difference from the check')),
        }),
        ...number(percent, {
          ...about,
          dimension: '%',
          kind: 'mean',
          words: () => of(say('the percentage of the check')),
          component,
        }),
        ...number(percent === null ? null : percent - 100, {
          ...about,
          dimension: '%',
          kind: 'difference',
          direction: (percent ?? 0) < 100 ? 'less' : 'more',
          words: () => of(say('the difference in percent of the check')),
        }),
      ];
    },
  );
  const whole = { ...g, treatments: [], component: null };
  return [
    ...means,
    ...pairs,
    ...checks,
    ...number(inference.least_significant_difference, {
      ...whole,
      kind: 'difference',
      words: () => ofAll(say('the least significant difference'), inference),
    }),
    ...number(inference.cv_percent, {
      ...whole,
      dimension: '%',
      kind: 'spread',
      words: () => ofAll(say('the coefficient of variation between units'), inference),
    }),
  ];
}
