import { checkTrial } from '../check/check-trial.ts';
import { type PlannedAnalysis, plannedAnalysis } from '../compute/planning/planned-analysis.ts';
import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import { hasError, type Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import { type Candidate, candidatesOf, type Refusal } from './candidates.ts';
import type { PlanRequest } from './plan-request.ts';
import { plannedFiles } from './planned-files.ts';

/** A trial folder that passes the check, with what it will be able to tell. */
export interface Proposal {
  candidate: Candidate;
  /** The seed that its layout is drawn from. */
  seed: number;
  files: ReadonlyMap<string, string>;
  trial: Trial;
  analysis: PlannedAnalysis | null;
  plants: number;
}

/** What the proposals are held against. */
export interface PlanContext {
  /** Of cultivars.yaml; null where there is none. */
  cultivars: readonly Cultivar[] | null;
  /** The site's trials, whose errors tell how much units of the crop vary. */
  others: readonly TrialWithFindings[];
  /** Year-month-day. */
  today: string;
  /** The coefficient of variation between units to reckon with, in percent, or with where it is from; null to take the site's own. */
  variation: number | PlannedAnalysis['variation'] | null;
}

/** A draw that shows another arrangement than the one drawn for, such as each treatment in a tank of its own. */
const misleading: ReadonlySet<string> = new Set([
  'allotted-contradicted',
  'arrangement-contradicted',
  'plot-not-one',
]);
const mostDraws = 100;

/**
 * Every way of laying the trial out that the request allows, drawn and checked, the best first; and what was refused.
 *
 * @param seed the first seed to try. A layout that by chance looks like another arrangement would be read as that
 *   one, so it is set aside and the next seed drawn from: the seed that served is the one that is published
 */
export function proposals(
  request: PlanRequest,
  seed: number,
  context: PlanContext,
): { proposals: Proposal[]; refusals: Refusal[]; problems: Problem[] } {
  const { candidates, refusals } = candidatesOf(request);
  const made = candidates.map((candidate) => propose(request, candidate, seed, context));
  return {
    proposals: made.filter((one) => 'trial' in one),
    refusals: [...refusals, ...made.filter((one) => 'reason' in one)],
    problems: made.find((one) => 'problems' in one)?.problems ?? [],
  };
}

type Made = Proposal | Refusal | { problems: Problem[] };

function propose(request: PlanRequest, candidate: Candidate, first: number, context: PlanContext): Made {
  let found: Problem[] = [];
  for (let seed = first; seed < first + mostDraws; seed += 1) {
    const drawn = plannedFiles(request, candidate, seed, context.today);
    if ('reason' in drawn) return drawn;
    const { files, plants } = drawn;
    if (request.seedlings !== null && request.seedlings < plants) {
      const reason = say(
        '{arrangement} would take {plants} seedlings, and there will be {seedlings}; make the grids smaller, or plan a border',
        { arrangement: say(candidate.arrangement), plants, seedlings: request.seedlings },
      );
      return { reason };
    }
    const { trial, problems } = checked(request.id, files, context);
    if (trial !== null) {
      const analysis = plannedAnalysis(trial, context.others, context.variation ?? undefined);
      return { candidate, seed, files, trial, analysis, plants };
    }
    found = problems.filter(({ severity }) => severity === 'error');
    if (found.some(({ rule }) => !misleading.has(rule))) break;
  }
  return { problems: found };
}

function checked(id: string, files: ReadonlyMap<string, string>, { cultivars, today }: PlanContext) {
  const encoder = new TextEncoder();
  const bytes = new Map([...files].map(([path, text]) => [path, encoder.encode(text)]));
  const result = checkTrial(id, bytes, { cultivars, today, prefix: '' });
  return hasError(result.problems) ? { ...result, trial: null } : result;
}
