import { say } from '../../model/say.ts';
import type { PositionEffects } from '../../model/findings.ts';
import { tTwoSided } from '../../statistics/distributions/student-t.ts';
import { isEstimable, lacksError } from '../../statistics/linear-model/fixed-effects.ts';
import { leastSquares } from '../../statistics/linear-model/least-squares.ts';
import { quadraticForm } from '../../statistics/linear-model/matrix.ts';
import { type Covariate, type Factor, modelTerms } from '../../statistics/linear-model/model-terms.ts';
import { marginalMeans } from '../../statistics/linear-model/marginal-means.ts';
import { groupCount, groupIndexes } from '../inference/grouping.ts';
import { treatmentKey } from '../treatments.ts';
import type { PotsOfContainer } from './pots-of-container.ts';

type Slope = PositionEffects['rows'];

/** What was fitted in one container: slopes along the grid beside treatments, and treatment means at mid-grid. */
export interface SlopesOfContainer {
  rows: Slope;
  columns: Slope;
  adjusted: { key: string; adjusted: number | null }[];
}

const needsMore = (): string => say('Fewer pots have a known weight than the slopes and treatments need.');

/**
 * Slopes along rows and columns in one container, by least squares beside its treatments and blocks: the
 * change of a pot's weight for one step along the grid. Null where treatments and place cannot be told
 * apart or no error is left.
 */
export function slopesOfContainer({ pots }: PotsOfContainer): SlopesOfContainer {
  const none = (reason: string): Slope => ({ slope: null, se: null, t: null, df: null, p: null, reason });
  if (pots.length < 3) return { rows: none(needsMore()), columns: none(needsMore()), adjusted: [] };
  const factors = [
    factorOf(
      'block',
      pots.map(({ position }) => position.block ?? ''),
    ),
    factorOf(
      'treatment',
      pots.map(({ position }) => treatmentKey(position.treatment)),
    ),
  ].filter(({ levels }) => levels > 1);
  const covariates: Covariate[] = [
    { name: 'rows', values: pots.map(({ position }) => position.row) },
    { name: 'columns', values: pots.map(({ position }) => position.column) },
  ].filter(({ values }) => new Set(values).size > 1);
  const terms = [...factors, ...covariates].map(({ name }) => [name]);
  const model = modelTerms(pots.length, factors, terms, covariates);
  const fit = leastSquares(
    model.matrix,
    pots.map(({ value }) => value),
  );
  const slope = (name: string): Slope => {
    const term = model.terms.find((each) => each.name === name);
    if (!term) return none(say(`There is one of the ${name} only.`));
    const contrast = new Float64Array(model.matrix.columns);
    contrast[term.start] = 1;
    if (!isEstimable(fit, contrast)) return none(say('Place and treatment cannot be told apart here.'));
    const estimate = fit.coefficients[term.start]!;
    const lacking = lacksError(fit, contrast);
    if (lacking !== null)
      return { ...none(say('No test: {reason}.', { reason: say(lacking) })), slope: estimate };
    const se = Math.sqrt(quadraticForm(contrast, fit.covariance, contrast));
    const t = estimate / se;
    return { slope: estimate, se, t, df: fit.residualDf, p: tTwoSided(t, fit.residualDf) };
  };
  const treatments = factors.find(({ name }) => name === 'treatment');
  const keys = [...new Set(pots.map(({ position }) => treatmentKey(position.treatment)))];
  const adjusted = treatments
    ? marginalMeans(fit, model, ['treatment']).means.map(({ levels, estimate }) => ({
        key: keys[levels[0]!]!,
        adjusted: estimate,
      }))
    : [];
  return { rows: slope('rows'), columns: slope('columns'), adjusted };
}

function factorOf(name: string, keys: readonly string[]): Factor {
  const values = groupIndexes(keys);
  return { name, levels: groupCount(values), values };
}
