import type { CheckedTaken } from '../../check/check-taken.ts';
import { excerpts } from '../../check/excerpt.ts';
import { rules } from '../../check/rules.ts';
import { findingSentence } from '../../compute/words/finding-sentence.ts';
import { restsOnSentence } from '../../compute/words/rests-on-sentence.ts';
import type { Cultivar } from '../../model/library.ts';
import type { FileProblems, GivenTrialWithFindings, Outcome, ShownProblem, TrialOutcome } from './outcome.ts';

/** So many problems of a file are shown; more are mostly echoes, and all are in the text that can be kept. */
const mostShown = 200;

/** What a page shows of checked files. */
export function outcomeOf(checked: CheckedTaken, trials: readonly GivenTrialWithFindings[]): Outcome {
  return {
    kind: checked.kind,
    names: checked.names,
    problems: checked.problems,
    files: byFile(checked),
    trials: trials.map((item) => trialOutcome(item, checked.cultivars)),
  };
}

function byFile({ problems, bytesOf }: CheckedTaken): FileProblems[] {
  const excerptOf = excerpts(bytesOf);
  const ruleOf = new Map(rules.map((rule) => [rule.rule, rule]));
  const files = new Map<string, { count: number; shown: ShownProblem[] }>();
  for (const problem of problems) {
    const of = files.get(problem.file) ?? { count: 0, shown: [] };
    files.set(problem.file, of);
    of.count += 1;
    if (of.shown.length >= mostShown) continue;
    const { title = problem.rule, meaning = '' } = ruleOf.get(problem.rule) ?? {};
    of.shown.push({ problem, excerpt: excerptOf(problem), title, meaning });
  }
  return [...files].map(([file, of]) => ({ file, ...of }));
}

function trialOutcome(
  { trial, findings }: GivenTrialWithFindings,
  cultivars: readonly Cultivar[],
): TrialOutcome {
  return {
    id: trial.id,
    title: trial.metadata.title,
    status: trial.metadata.status,
    counts: findings?.counts ?? null,
    finding: findings && findingSentence(trial, findings, cultivars),
    restsOn: findings && restsOnSentence(trial, findings),
    queries: trial.queries.length,
  };
}
