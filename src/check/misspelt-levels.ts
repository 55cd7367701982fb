import type { Problem } from '../model/problem.ts';
import type { Factor } from '../model/trial.ts';
import type { Facts } from './facts.ts';
import { nearest } from './nearest.ts';
import type { Report } from './rule.ts';
import { idOfName } from './rules/unknown-cultivar.ts';
import { reportMisspeltLevel } from './rules/unknown-level.ts';

/** Rules that tell of a level that is not listed, and those that tell of one that is listed and means nothing. */
const ofUnlisted = new Set(['unknown-level', 'container-treatment', 'check-not-a-level']);
const ofListed = new Set(['unknown-cultivar', 'level-without-position']);

/**
 * The problems, a level that is misspelt where trial.yaml lists it told once and there: the rows, the check and the
 * cultivars that have it right seem to be wrong for it.
 */
export function misspeltLevels(problems: Problem[], facts: Facts, report: Report): Problem[] {
  let kept = problems;
  const { factors = [] } = facts.metadata.draft;
  for (const [index, factor] of factors.entries()) {
    const slip = slipOf(factor, problems, facts);
    if (slip === null) continue;
    const { listed, meant, number } = slip;
    reportMisspeltLevel(report, facts.metadata.place(['factors', index, 'levels', number, 'id']), {
      listed,
      meant,
      factor: factor.id,
    });
    // What was reported now stands behind those that were there.
    kept = problems.filter(
      ({ rule, found }, at) =>
        at === problems.length - 1 ||
        !((ofUnlisted.has(rule) && found === meant) || (ofListed.has(rule) && found === listed)),
    );
    break;
  }
  return kept;
}

/** The level of a factor that no row names, and the name alike that rows have and that the check or cultivars.yaml knows. */
function slipOf(
  factor: Factor,
  problems: readonly Problem[],
  { cultivars, layout, metadata }: Facts,
): { listed: string; meant: string; number: number } | null {
  const used = new Set([
    ...(layout?.positions ?? []).map(({ treatment }) => treatment[factor.id]),
    ...(metadata.draft.containers ?? []).map(({ treatment }) => treatment?.[factor.id]),
  ]);
  const unused = factor.levels.map(({ id }) => id).filter((id) => !used.has(id));
  const isCultivar = (id: string): boolean =>
    factor.kind === 'cultivar' && (cultivars ?? []).some((one) => one.id === id);
  const unlisted = problems.find(
    ({ rule, found }) =>
      rule !== 'check-not-a-level' && ofUnlisted.has(rule) && found !== null && used.has(found),
  )?.found;
  if (unlisted === undefined || unlisted === null || (factor.check !== unlisted && !isCultivar(unlisted)))
    return null;
  const bySynonym = unused.find((id) => idOfName(id, cultivars ?? []) === unlisted);
  const listed = bySynonym ?? nearest(unlisted, unused);
  if (listed === null || isCultivar(listed)) return null;
  return { listed, meant: unlisted, number: factor.levels.findIndex(({ id }) => id === listed) };
}
