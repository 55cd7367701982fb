import type { Findings, Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import { headlineOf } from '../../words/headline.ts';

/** An analysis with those that come to the same. */
export interface ShownAnalysis {
  inference: Inference;
  /** Its place on the page, from 1. */
  place: number;
  repeats: readonly Inference[];
}

/**
 * The analyses in the order in which a page shows them: that of the finding first. One that comes to the same
 * numbers as an earlier one (per pot where each pot held one plant), or that is not tested for the same
 * reason, is named beside that one and not shown again.
 */
export function analysesShown(trial: Trial, findings: Findings): ShownAnalysis[] {
  const first = headlineOf(trial, findings).inference;
  const ordered = [
    ...(first ? [first] : []),
    ...findings.inference.filter((inference) => inference !== first),
  ];
  const groups = Map.groupBy(ordered, contents);
  return [...groups.values()].map(([inference, ...repeats], index) => ({
    inference: inference!,
    place: index + 1,
    repeats,
  }));
}

function contents({ verdict, reason, anova, means, differences, cut }: Inference): string {
  return verdict === 'tested' ? JSON.stringify([cut, anova, means, differences]) : reason;
}
