import { say, sayCount } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial, TrialMetadata } from '../../model/trial.ts';
import { medianOf } from '../../statistics/median.ts';
import { detectableDifference } from '../../statistics/power/detectable-difference.ts';
import { analysisDesign, type AnalysisDesign, type TreatmentTerm } from '../inference/analysis-design.ts';
import { errorDegrees, stratumOf } from '../inference/error-degrees.ts';
import { unitsOfFactors } from '../inference/replicates.ts';
import { ownVariation } from '../next-trial.ts';
import { sameCrop } from '../site-findings.ts';

const alpha = 0.05;
const power = 0.8;
/** In percent, where the site has no tested trial of the crop (common practice, no source). */
const assumedVariation = 15;

/** One factor, or several together, as a layout will let it be told. */
export interface PlannedTerm {
  term: TreatmentTerm;
  /** Of the error that it will be held against. */
  errorDf: number;
  /** Units of the level that has fewest; null for several factors together. */
  replicates: number | null;
  /** In percent of the mean, between two levels with 80% power; null where nothing can be told. */
  detectablePercent: number | null;
}

/** What a layout will be able to tell, before anything is weighed. */
export interface PlannedAnalysis {
  design: AnalysisDesign;
  units: ReturnType<typeof unitsOfFactors>;
  terms: PlannedTerm[];
  /** The strata whose units are left over to tell an error. */
  errors: string[];
  /** The coefficient of variation between units that is reckoned with, in percent, and where it is from. */
  variation: { percent: number; from: string };
}

/**
 * The analysis that a planned trial's layout promises: the experimental units, the error of each term with its
 * degrees of freedom, and the difference that it would find with 80% power at the 5% level (noncentral t).
 * Null where fewer than two treatments are laid out.
 *
 * @param others the site's trials, whose errors tell how much units of this crop vary
 * @param stated the coefficient of variation to reckon with instead, in percent, or with where it is from
 */
export function plannedAnalysis(
  trial: Trial,
  others: readonly { trial: Trial; findings: Findings | null }[],
  stated?: number | PlannedAnalysis['variation'],
): PlannedAnalysis | null {
  // Only where they stand matters: nothing has been weighed.
  const observations = trial.positions.map((position) => ({ position, value: 0 }));
  const varied = (trial.metadata.factors ?? []).some(
    ({ id }) => new Set(observations.map(({ position }) => position.treatment[id])).size > 1,
  );
  if (!varied) return null;
  const design = analysisDesign(trial, observations);
  const degrees = errorDegrees(design);
  const units = unitsOfFactors(trial, observations);
  const variation =
    typeof stated === 'number'
      ? { percent: stated, from: say('as stated') }
      : (stated ?? variationOf(trial.metadata, trial.id, others));
  const terms = design.terms.map((term): PlannedTerm => {
    const errorDf = degrees.get(stratumOf(design, term.unit)) ?? 0;
    const counts = Object.values(units.find(({ factor }) => factor === term.name)?.replicates ?? {});
    const replicates = term.factors.length === 1 ? Math.min(...counts) : null;
    const detectablePercent =
      replicates === null || replicates < 2 || errorDf < 1
        ? null
        : detectableDifference(
            {
              cvPercent: variation.percent,
              treatments: counts.length,
              design: design.blocks.length > 0 ? 'randomised blocks' : 'completely randomised',
              errorDf,
              alpha,
              test: 't',
            },
            replicates,
            power,
          );
    return { term, errorDf, replicates, detectablePercent };
  });
  const errors = [...degrees].filter(([, df]) => df > 0).map(([stratum]) => stratum);
  return { design, units, terms, errors, variation };
}

/**
 * How much units of a crop vary, in percent of their mean, by the site's tested trials of it; an assumption where
 * there are none.
 *
 * @param id the trial itself, which is left out
 */
export function variationOf(
  metadata: Pick<TrialMetadata, 'crop'>,
  id: string | null,
  others: readonly { trial: Trial; findings: Findings | null }[],
): PlannedAnalysis['variation'] {
  const known = others.flatMap((other) =>
    other.findings === null || other.trial.id === id || !sameCrop(other.trial, { metadata })
      ? []
      : (ownVariation(other.trial, other.findings.inference) ?? []),
  );
  if (known.length === 0) {
    return {
      percent: assumedVariation,
      from: say('an assumption, as this site has no tested trial of the crop'),
    };
  }
  const crop = metadata.crop.name.toLowerCase();
  return {
    percent: medianOf(known),
    from: sayCount(
      known.length,
      "the median error of the site's {count} tested trial of {crop}",
      "the median error of the site's {count} tested trials of {crop}",
      { crop },
    ),
  };
}
