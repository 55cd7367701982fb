import type { Query, Trial } from '../../model/trial.ts';

/** A query of an earlier version that a later one no longer has. */
export interface ResolvedQuery {
  query: Query;
  /** The last version known to have it. */
  last: string;
  /** The first version known to be without it. */
  resolvedIn: string;
  /** True where a release lies between the two that was not frozen, so that it may have been resolved in that one. */
  orBefore: boolean;
}

/** The queries of a trial's frozen versions that later versions resolved, the latest resolved first. */
export function resolvedQueries(trial: Trial): ResolvedQuery[] {
  const versions = [...(trial.earlier ?? []).flatMap((one) => one.trial ?? []), trial];
  const releases = (trial.metadata.releases ?? []).map(({ version }) => version);
  const resolved: ResolvedQuery[] = [];
  for (const [index, before] of versions.entries()) {
    const after = versions[index + 1];
    if (after === undefined) break;
    const [last, resolvedIn] = [before.metadata.version, after.metadata.version];
    const orBefore = releases.indexOf(resolvedIn) - releases.indexOf(last) > 1;
    const kept = new Set(after.queries.map(nameOf));
    for (const query of before.queries) {
      if (!kept.has(nameOf(query))) resolved.push({ query, last, resolvedIn, orBefore });
    }
  }
  return resolved.reverse();
}

/** The same query has the same rule and place; lines move from version to version. */
function nameOf({ problem }: Query): string {
  return [problem.rule, problem.where ?? problem.file.split('/').at(-1)].join('\0');
}
