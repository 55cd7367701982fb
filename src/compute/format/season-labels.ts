import type { Seasons } from '../../model/generated/seasons.ts';

/**
 * A short label for each trial of a comparison, all different: its season, a number behind it where several
 * trials had the same, and an asterisk where the trial had no error of its own.
 */
export function seasonLabels(trials: Seasons['trials']): Map<string, string> {
  const labels = new Map<string, string>();
  const seen = new Map<string, number>();
  for (const { id, season, replicated } of trials) {
    const count = (seen.get(season) ?? 0) + 1;
    seen.set(season, count);
    labels.set(id, `${season}${count === 1 ? '' : ` (${String(count)})`}${replicated ? '' : '*'}`);
  }
  return labels;
}
