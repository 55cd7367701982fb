import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import { brownForsythe } from '../../statistics/brown-forsythe.ts';
import { shapiroWilk } from '../../statistics/shapiro-wilk.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import type { UnitMeans } from './unit-means.ts';
import { unusualPositions } from './unusual-positions.ts';

/** Whether an analysis may be relied on: are residuals like normal ones, spreads alike, single pots unusual? */
export function checksOf(
  design: AnalysisDesign,
  units: UnitMeans,
  alpha: number,
): NonNullable<Inference['checks']> {
  const normal = shapiroWilk([...units.fit.residuals]);
  const groups = [...Map.groupBy(units.units, ({ treatment }) => treatment).values()];
  const spread = brownForsythe(groups.map((members) => members.map(({ mean }) => mean)));
  return {
    shapiro_wilk: {
      w: normal.w,
      p: normal.p,
      ...('reason' in normal ? { reason: say(normal.reason) } : {}),
    },
    brown_forsythe: {
      f: spread.f,
      df1: spread.df1,
      df2: spread.df2,
      p: spread.p,
      ...('reason' in spread ? { reason: say(spread.reason) } : {}),
    },
    unusual: unusualPositions(design, alpha),
  };
}
