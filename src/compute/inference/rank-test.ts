import { say, sayCount } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { friedman } from '../../statistics/friedman.ts';
import { kruskalWallis } from '../../statistics/kruskal-wallis.ts';
import { meanOf } from '../../statistics/mean.ts';
import { medianOf } from '../../statistics/median.ts';
import type { Treatment } from '../../model/trial.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { treatmentGroups, treatmentKey } from '../treatments.ts';
import type { UnitMean, UnitMeans } from './unit-means.ts';

type RankTest = NonNullable<Inference['rank_test']>;

/**
 * For scores and counts: medians, and a test on the ranks of units. Friedman's where every block holds every
 * treatment once or more (the block's mean of each), Kruskal and Wallis's where there are no blocks. Null for
 * measured variables, and where these do not fit: with factors on units of different size the ranks of the
 * finer ones would count as replicates of the coarser ones' treatments, and a Latin square has blocks two ways.
 */
export function rankTestOf(trial: Trial, design: AnalysisDesign, { units }: UnitMeans): RankTest | null {
  if (trial.metadata.variables[0]!.kind === 'measured') return null;
  if (hasUnitsOfSeveralSizes(design) || isSquare(design)) return null;
  const byTreatment = Map.groupBy(units, ({ treatment }) => treatment);
  const order = treatmentGroups(trial).map(({ treatment }) => treatmentKey(treatment));
  const medians = order.flatMap((key) => {
    const members = byTreatment.get(key);
    return members === undefined ? [] : [medianOfUnits(key, members)];
  });
  const keys = [...byTreatment.keys()];
  const blocks = [...Map.groupBy(units, ({ block }) => block).values()];
  if (blocks.length < 2) {
    const test = kruskalWallis(keys.map((key) => byTreatment.get(key)!.map(({ mean }) => mean)));
    return { method: 'Kruskal-Wallis', medians, ...numbers(test) };
  }
  const test = friedman(
    blocks.map((members) =>
      keys.map((key) => {
        const values = members.filter(({ treatment }) => treatment === key).map(({ mean }) => mean);
        return values.length === 0 ? null : meanOf(values);
      }),
    ),
  );
  const left = blocks.length - test.n / keys.length;
  return { method: 'Friedman', medians, ...numbers(test), ...(test.p === null ? {} : lacking(left)) };
}

/** Medians are of every unit, ranks of complete blocks alone: where these differ it is said. */
function lacking(blocks: number): Pick<RankTest, 'reason'> {
  if (blocks === 0) return {};
  return {
    reason: sayCount(
      blocks,
      '{count} block that lacks a treatment takes no part in the ranks.',
      '{count} blocks that lack a treatment take no part in the ranks.',
    ),
  };
}

function hasUnitsOfSeveralSizes(design: AnalysisDesign): boolean {
  return design.terms.some(({ unit }) => unit !== design.finest);
}

/** Whether rows and columns are blocks. */
export function isSquare({ blocks }: AnalysisDesign): boolean {
  return blocks.some(([name]) => name === 'row' || name === 'column');
}

function numbers(test: ReturnType<typeof friedman>): Pick<RankTest, 'statistic' | 'df' | 'p' | 'reason'> {
  const { statistic, df, p } = test;
  return { statistic, df, p, ...('reason' in test ? { reason: say(test.reason) } : {}) };
}

function medianOfUnits(key: string, members: readonly UnitMean[]): RankTest['medians'][number] {
  return {
    treatment: Object.fromEntries(JSON.parse(key) as [string, string][]) as Treatment,
    median: medianOf(members.map(({ mean }) => mean)),
    n: members.length,
  };
}
