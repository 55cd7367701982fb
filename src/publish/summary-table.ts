import type { Findings, Summary, TreatmentDescription } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import type { Cell, Table } from './csv.ts';

const measures = ['per_plant_harvested', 'per_plant_set', 'per_pot', 'per_container'] as const;

const numbers = [
  'n',
  'missing',
  'mean',
  'sd',
  'se',
  'cv',
  'minimum',
  'lower_quartile',
  'median',
  'upper_quartile',
  'maximum',
] as const;

function described(summary: Summary | null): Cell[] {
  if (summary === null) return [...numbers, 'lower', 'upper'].map(() => null);
  const interval: readonly number[] | null = summary.ci95;
  return [...numbers.map((name) => summary[name] ?? null), interval?.[0] ?? null, interval?.[1] ?? null];
}

function reasons(description: TreatmentDescription): string | null {
  const found = [
    description.reason,
    ...measures.map((measure) => {
      const reason = description[measure]?.reason;
      return reason === undefined ? undefined : `${measure}: ${reason}`;
    }),
  ];
  return found.filter((reason) => reason !== undefined && reason !== '').join('; ') || null;
}

function row(factors: readonly string[], cut: string, description: TreatmentDescription): Cell[] {
  return [
    ...factors.map((factor) => description.treatment[factor] ?? null),
    cut,
    description.containers,
    description.pots,
    description.plants,
    ...measures.flatMap((measure) => described(description[measure])),
    description.kg_per_m2,
    description.g_per_m2_day,
    description.days_from_sowing,
    description.days_from_transplanting,
    reasons(description),
  ];
}

/**
 * All descriptive numbers: one row a treatment over all cuts (`all`), then one for each cut where there is
 * more than one. Weights in g, areas in m2.
 */
export function summaryTable(trial: Trial, findings: Findings): Table {
  const factors = (trial.metadata.factors ?? []).map((factor) => factor.id);
  const columns = [
    ...factors,
    'cut',
    'containers',
    'pots',
    'plants',
    ...measures.flatMap((measure) =>
      [...numbers, 'ci95_lower', 'ci95_upper'].map((name) => `${measure}_${name}`),
    ),
    'kg_per_m2',
    'g_per_m2_day',
    'days_from_sowing',
    'days_from_transplanting',
    'reason',
  ];
  const rows = [
    ...findings.treatments.map((description) => row(factors, 'all', description)),
    ...findings.treatments_by_cut.flatMap(({ cut, treatments }) =>
      treatments.map((description) => row(factors, String(cut), description)),
    ),
  ];
  return { columns, rows };
}
