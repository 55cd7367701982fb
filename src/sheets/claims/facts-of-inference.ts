import { measureNames } from '../../compute/tables/measures.ts';
import type { Inference } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import { written } from '../asked-treatment.ts';
import type { Fact } from './fact.ts';
import { cutAttribute, inCut, number, per } from './fact-words.ts';

/** Adjusted means, differences and what else an analysis gives. */
export function factsOfInference(inference: Inference, name: (treatment: Treatment) => string): Fact[] {
  const { measure, cut } = inference;
  const by = ` ${measureNames[measure]}`;
  const g = { dimension: 'g' as const, measure };
  const asked = ` per="${per[measure]}"${cutAttribute(cut)}`;
  const means = inference.means.flatMap(({ treatment, mean, lower, upper, se }): Fact[] => {
    const of = `${by} of ${name(treatment)}${inCut(cut)}`;
    const about = { ...g, treatments: [treatment], component: null };
    return [
      ...number(mean, {
        ...about,
        kind: 'mean',
        words: `the adjusted mean${of}`,
        component: `<Value of="adjusted_mean" where="${written(treatment)}"${asked} />`,
      }),
      ...number(lower, { ...about, kind: 'limits', words: `the lower limit of the mean${of}` }),
      ...number(upper, { ...about, kind: 'limits', words: `the upper limit of the mean${of}` }),
      ...number(se, { ...about, kind: 'spread', words: `the standard error of the mean${of}` }),
    ];
  });
  const pairs = inference.differences.flatMap(({ a, b, estimate, lower, upper, se }): Fact[] => {
    const of = `${by} between ${name(a)} and ${name(b)}${inCut(cut)}`;
    const about = { ...g, treatments: [a, b], component: null };
    const component = `<Difference a="${written(a)}" b="${written(b)}"${asked} />`;
    return [
      ...number(estimate, { ...about, kind: 'difference', words: `the difference${of}`, component }),
      ...number(lower, { ...about, kind: 'limits', words: `a limit of the difference${of}`, component }),
      ...number(upper, { ...about, kind: 'limits', words: `a limit of the difference${of}`, component }),
      ...number(se, { ...about, kind: 'spread', words: `the standard error of the difference${of}` }),
    ];
  });
  const checks = inference.against_check.flatMap(
    ({ treatment, estimate, lower, upper, percent_of_check: percent }): Fact[] => {
      const of = `${by} of ${name(treatment)}${inCut(cut)}`;
      const about = { ...g, treatments: [treatment], component: null };
      const component = `<Value of="percent_of_check" where="${written(treatment)}"${asked} />`;
      return [
        ...number(estimate, { ...about, kind: 'difference', words: `the difference from the check${of}` }),
        ...number(lower, {
          ...about,
          kind: 'limits',
          words: `a limit of the difference from the check${of}`,
        }),
        ...number(upper, {
          ...about,
          kind: 'limits',
          words: `a limit of the difference from the check${of}`,
        }),
        ...number(percent, {
          ...about,
          dimension: '%',
          kind: 'mean',
          words: `the percentage of the check${of}`,
          component,
        }),
        ...number(percent === null ? null : percent - 100, {
          ...about,
          dimension: '%',
          kind: 'difference',
          words: `the difference in percent of the check${of}`,
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
      words: `the least significant difference${by}${inCut(cut)}`,
    }),
    ...number(inference.cv_percent, {
      ...whole,
      dimension: '%',
      kind: 'spread',
      words: `the coefficient of variation between units${by}${inCut(cut)}`,
    }),
  ];
}
