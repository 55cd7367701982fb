import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Query } from '../model/trial.ts';
import type { Facts } from './facts.ts';
import { ruleNamed, rules } from './rules.ts';
import { acceptedInVain } from './rules/accepted-in-vain.ts';

/** A trial's problems once `accepted` is heeded, and what is published as open queries. */
export interface Settled {
  problems: Problem[];
  queries: Query[];
}

type Accepted = NonNullable<Facts['metadata']['draft']['accepted']>[number];

/** Turns accepted errors into warnings with the grower's reason; every warning is published as a query. */
export function applyAccepted(problems: readonly Problem[], facts: Facts, prefix: string): Settled {
  const accepted = facts.metadata.draft.accepted ?? [];
  const used = new Set<Accepted>();
  const settled: Problem[] = [];
  const queries: Query[] = [];
  for (const problem of problems) {
    const entry = ruleNamed(problem.rule)?.acceptable
      ? accepted.find((one) => isMeant(one, problem, problems))
      : undefined;
    if (entry !== undefined) used.add(entry);
    const isAccepted = entry !== undefined && problem.severity !== 'note';
    const message = isAccepted
      ? say('{message} (accepted: {reason})', { message: problem.message, reason: entry.reason })
      : problem.message;
    const kept: Problem = isAccepted ? { ...problem, severity: 'warning', message } : problem;
    settled.push(kept);
    if (kept.severity === 'warning')
      queries.push({ problem: { ...kept, message: problem.message }, reason: entry?.reason ?? null });
  }
  for (const [index, entry] of accepted.entries()) {
    if (used.has(entry)) continue;
    settled.push(...acceptedInVain(entry, index, problems, rules, facts, prefix));
  }
  return { problems: settled, queries };
}

const plain = (where: string): string => where.trim().replaceAll(/[\s,]+/g, ' ');

/** True where an entry of `accepted` means a problem: the same rule, and the same place where it names one. */
function isMeant({ rule, where }: Accepted, problem: Problem, all: readonly Problem[]): boolean {
  if (rule !== problem.rule) return false;
  const name = problem.file.split('/').at(-1);
  if (where === undefined)
    return problem.where === null || all.filter((one) => one.rule === rule).length === 1;
  if (problem.where === null) return plain(where) === name;
  return plain(where) === plain(problem.where);
}
