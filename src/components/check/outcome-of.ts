import type { CheckedTaken } from '../../check/check-taken.ts';
import { excerpts } from '../../check/excerpt.ts';
import { printCount } from '../../check/print-problem.ts';
import { rules } from '../../check/rules.ts';
import { findingSentence } from '../../compute/words/finding-sentence.ts';
import { restsOnSentence } from '../../compute/words/rests-on-sentence.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Problem } from '../../model/problem.ts';
import { say } from '../../model/say.ts';
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
    trials: trials
      .filter(({ trial }) => isSound(trial.id, checked))
      .map((item) => trialOutcome(item, checked.cultivars)),
  };
}

/** A trial without an error may yet have a fact sheet with one. */
function isSound(id: string, { kind, problems }: CheckedTaken): boolean {
  const prefix = kind === 'trial' ? '' : `trials/${id}/`;
  return !problems.some(({ severity, file }) => severity === 'error' && file.startsWith(prefix));
}

function byFile({ problems, bytesOf }: CheckedTaken): FileProblems[] {
  const excerptOf = excerpts(bytesOf);
  const ruleOf = new Map(rules.map((rule) => [rule.rule, rule]));
  const shown = (problem: Problem): ShownProblem => {
    const { title = problem.rule, meaning = '' } = ruleOf.get(problem.rule) ?? {};
    return { problem, excerpt: excerptOf(problem), title: say(title), meaning: say(meaning) };
  };
  const files = new Map<string, Problem[]>();
  for (const problem of problems) {
    const own = files.get(problem.file);
    if (own === undefined) files.set(problem.file, [problem]);
    else own.push(problem);
  }
  return [...files].map(([file, own]) => ({
    file,
    count: printCount(own),
    more: Math.max(0, own.length - mostShown),
    shown: own.slice(0, mostShown).map(shown),
  }));
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
