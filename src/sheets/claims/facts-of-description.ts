import { type Measure, measureNames } from '../../compute/tables/measures.ts';
import type { Summary, TreatmentDescription } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import { written } from '../asked-treatment.ts';
import type { Fact, FactKind } from './fact.ts';
import { type Cut, cutAttribute, inCut, per } from './fact-words.ts';

const measures = Object.keys(measureNames) as Measure[];

const statistics: readonly [keyof Summary & string, FactKind, string][] = [
  ['mean', 'mean', 'mean'],
  ['median', 'mean', 'median'],
  ['minimum', 'extreme', 'lowest weight'],
  ['maximum', 'extreme', 'highest weight'],
  ['sd', 'spread', 'standard deviation'],
  ['se', 'spread', 'standard error'],
  ['lower_quartile', 'quartiles', 'lower quartile'],
  ['upper_quartile', 'quartiles', 'upper quartile'],
];

const printed = new Set(['mean', 'median', 'minimum', 'maximum', 'sd', 'lower_quartile', 'upper_quartile']);

/** What a treatment gave at a cut, or at all. */
export function factsOfDescription(
  description: TreatmentDescription,
  cut: Cut,
  name: (treatment: Treatment) => string,
): Fact[] {
  const { treatment } = description;
  const of = `of ${name(treatment)}${inCut(cut)}`;
  const where = `${Object.keys(treatment).length === 0 ? '' : ` where="${written(treatment)}"`}${cutAttribute(cut)}`;
  const about = { treatments: [treatment] };
  const summaries = measures.flatMap((measure) => {
    const summary = description[measure];
    if (summary === null) return [];
    const words = (what: string): string => `the ${what} ${measureNames[measure]} ${of}`;
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
        words: words('95% limit of the mean'),
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
              words: words('coefficient of variation'),
              measure,
              component: `<Value of="cv" per="${per[measure]}"${where} />`,
              ...about,
            },
          ];
    return [...numbers, ...limits, ...cv];
  });
  return [...summaries, ...ofArea(description, of, where), ...ofLosses(description, of)];
}

function ofArea(
  { kg_per_m2: yielded, g_per_m2_day: rate, treatment }: TreatmentDescription,
  of: string,
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
            words: `the yield by area ${of}`,
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
            words: `the yield by area and day ${of}`,
            component: `<Value of="yield_per_day"${where} />`,
          },
        ]),
  ];
}

/** Which share of the plants set was harvested, and which was not. */
function ofLosses(
  { plants, per_plant_harvested: harvested, treatment }: TreatmentDescription,
  of: string,
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
    { ...about, value: share, words: `the share of plants harvested ${of}` },
    { ...about, value: 100 - share, words: `the share of plants not harvested ${of}` },
  ];
}
