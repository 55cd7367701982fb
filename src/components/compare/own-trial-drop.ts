/** Takes a reader's own trial, has it checked beside the page, and sets it among the published ones. */
import { language } from '../../model/language.ts';
import { hasError } from '../../model/problem.ts';
import { say, sayCount } from '../../model/say.ts';
import { checkFiles } from '../check/check-files.ts';
import type { CheckAnswer } from '../check/check-worker.ts';
import { takeFiles } from '../check/drop-zone.ts';
import { problemsHtml, verdict } from '../check/outcome-html.ts';
import type { GivenTrialWithFindings, Outcome } from '../check/outcome.ts';
import type { PageFile } from '../check/page-files.ts';
import { addOwnTrial, removeOwnTrial } from './own-trial.ts';
import { askAboutTable, closeTableForm } from './table-form.ts';

if (language() !== 'en') await import('../../model/messages.ts');
const part = (id: string): HTMLElement => document.getElementById(`own-trial-${id}`)!;

const zone = part('drop');
const told = part('told');
const list = part('list');
const result = part('result');
const heading = part('found');
let asked = 0;

async function take(gather: Promise<readonly PageFile[]>): Promise<void> {
  const mine = (asked += 1);
  closeTableForm();
  told.textContent = say('Checking …');
  result.hidden = true;
  const answer = await gather
    .then(checked)
    .catch((error: unknown): CheckAnswer => ({ fault: String(error) }));
  if (mine !== asked || answer === null) return;
  if ('fault' in answer)
    told.textContent = say('This could not be checked: {reason}.', { reason: answer.fault });
  else if ('lacks' in answer) {
    const reasons = answer.lacks.map((sentence) => sentence.replace(/\.$/, '')).join('; ');
    told.textContent = say('The table alone cannot stand for a trial: {reasons}.', { reasons });
  } else if ('outcome' in answer) {
    const { outcome, trials, unused } = answer;
    if (hasError(outcome.problems)) refuse(outcome);
    else await addAll(outcome, trials, unused);
  }
}

/** Checks the files; of a table alone what it does not say is asked first. Null where the reader leaves it. */
async function checked(files: readonly PageFile[]): Promise<CheckAnswer | null> {
  const answer = await checkFiles(files, { withTrials: true, table: 'ask' });
  if (!('questions' in answer)) return answer;
  told.textContent = say('The table was read. What it does not say is asked below.');
  const answers = await askAboutTable(answer.questions);
  if (answers === null) {
    told.textContent = '';
    return null;
  }
  return checkFiles(files, { withTrials: true, table: answers });
}

/** Shows what to mend first; the trial takes no part. */
function refuse(outcome: Outcome): void {
  told.textContent = say('It takes no part until it is mended.');
  showProblems(outcome);
  heading.focus();
}

function showProblems(outcome: Outcome): void {
  heading.textContent = verdict(outcome);
  part('problems').innerHTML = problemsHtml(outcome, zone.dataset['checks'] ?? '');
  result.hidden = false;
}

async function addAll(
  outcome: Outcome,
  trials: readonly GivenTrialWithFindings[],
  unused: readonly string[],
): Promise<void> {
  const sentences: string[] = [];
  for (const own of trials) {
    try {
      const { takesPart, sentence } = await addOwnTrial(own);
      sentences.push(sentence);
      if (takesPart) listOwn(own);
    } catch {
      sentences.push(
        say('The data of the published trials could not be had, so there is nothing to compare with.'),
      );
    }
  }
  if (unused.length > 0) {
    sentences.push(
      sayCount(unused.length, 'Not read: the column {columns}.', 'Not read: the columns {columns}.', {
        columns: unused.join(', '),
      }),
    );
  }
  told.textContent = sentences.join(' ');
  // Warnings do not keep it out, but a reader should know of them.
  if (outcome.problems.length > 0) showProblems(outcome);
}

function listOwn({ trial }: GivenTrialWithFindings): void {
  const { id } = trial;
  list.querySelector(`[data-id="${CSS.escape(id)}"]`)?.remove();
  const item = document.createElement('li');
  item.dataset['id'] = id;
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = say('Take {title} away again', { title: trial.metadata.title });
  button.addEventListener('click', () => {
    void removeOwnTrial(id).then(() => {
      item.remove();
      list.hidden = list.children.length === 0;
      result.hidden = true;
      told.textContent = say('{title} is no longer among the trials.', { title: trial.metadata.title });
      zone.querySelector('button')?.focus();
    });
  });
  item.append(button);
  list.append(item);
  list.hidden = false;
}

takeFiles(zone, (gather) => void take(gather));
