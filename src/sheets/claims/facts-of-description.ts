import { type Measure, measureNames } from '../../compute/tables/measures.ts';
import type { Summary, TreatmentDescription } from '../../model/findings.ts';
import { say } from '../../model/say.ts';
import type { Treatment } from '../../model/trial.ts';
import { written } from '../asked-treatment.ts';
import type { Fact, FactKind } from './fact.ts';
import { type Cut, cutAttribute, ofOne, ofTreatment, per } from './fact-words.ts';

const measures = Object.keys(measureNames) as Measure[];

const statistics: readonly [keyof Summary & string, FactKind, () => string][] = [
  ['mean', 'mean', () => say('the mean')],
  ['median', 'mean', () => say('the median')],
  ['minimum', 'extreme', () => say('the lowest weight')],
  ['maximum', 'extreme', () => say('the highest weight')],
  ['sd', 'spread', () => say('the standard deviation')],
  ['se', 'spread', () => say('the standard error')],
  ['lower_quartile', 'quartiles', () => say('the lower quartile')],
  ['upper_quartile', 'quartiles', () => say('the upper quartile')],
];

const printed = new Set(['mean', 'median', 'minimum', 'maximum', 'sd', 'lower_quartile', 'upper_quartile']);

/** What a treatment gave at a cut, or at all. */
export function factsOfDescription(
  description: TreatmentDescription,
  cut: Cut,
  name: (treatment: Treatment) => string,
): Fact[] {
  const { treatment } = description;
  const where = `${Object.keys(treatment).length === 0 ? '' : ` where="${written(treatment)}"`}${cutAttribute(cut)}`;
  const about = { treatments: [treatment] };
  const summaries = measures.flatMap((measure) => {
    const summary = description[measure];
    if (summary === null) return [];
    const words = (what: () => string) => () => ofOne(what(), { measure, cut }, name(treatment));
    const value = (what: string): string | null =>
      printed.has(what) ? `<Value of="${what}" per="${per[measure]}"${where} />` : null;
    const numbers = statistics.flatMap(([key, kind, what]): Fact[] => {
      const number = summary[key];
      if (typeof number !== 'number') return [];
      return [
        { value: number, dimension: 'g', kind, words: words(what), measure, component: value(key), ...about },
      ];
    });
    const limits = (summary.ci95 ?? []).map((limit): Fact => {
      return {
        value: limit,
        dimension: 'g',
        kind: 'limits',
        words: words(() => say('the 95% limit of the mean')),
        measure,
        component: null,
        ...about,
      };
    });
    const cv: Fact[] =
      summary.cv === null
        ? []
        : [
            {
              value: summary.cv,
              dimension: '%',
              kind: 'spread',
              words: words(() => say('the coefficient of variation')),
              measure,
              component: `<Value of="cv" per="${per[measure]}"${where} />`,
              ...about,
            },
          ];
    return [...numbers, ...limits, ...cv];
  });
  const of = (what: string): string => ofTreatment(what, name(treatment), cut);
  return [...summaries, ...ofArea(description, of, where), ...ofLosses(description, of)];
}

function ofArea(
  { kg_per_m2: yielded, g_per_m2_day: rate, treatment }: TreatmentDescription,
  of: (what: string) => string,
  where: string,
): Fact[] {
  const about = { kind: 'mean' as const, treatments: [treatment], measure: null };
  return [
    ...(yielded === null
      ? []
      : [
          {
            ...about,
            value: yielded,
            dimension: 'kg/m2' as const,
            words: () => of(say('the yield by area')),
            component: `<Value of="yield"${where} />`,
          },
        ]),
    ...(rate === null
      ? []
      : [
          {
            ...about,
            value: rate,
            dimension: 'g/m2/day' as const,
            words: () => of(say('the yield by area and day')),
            component: `<Value of="yield_per_day"${where} />`,
          },
        ]),
  ];
}

/** Which share of the plants set was harvested, and which was not. */
function ofLosses(
  { plants, per_plant_harvested: harvested, treatment }: TreatmentDescription,
  of: (what: string) => string,
): Fact[] {
  if (harvested === null || plants === 0) return [];
  const share = (100 * harvested.n) / plants;
  const about = {
    dimension: '%' as const,
    kind: 'share' as const,
    treatments: [treatment],
    measure: null,
    component: null,
  };
  return [
    { ...about, value: share, words: () => of(say('the share of plants harvested')) },
    { ...about, value: 100 - share, words: () => of(say('the share of plants not harvested')) },
  ];
}
