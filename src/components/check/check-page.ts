/** The page of checks: takes files, has them checked beside the page, and shows what was found. */
import { printJson, printReport } from '../../check/print-problem.ts';
import { language } from '../../model/language.ts';
import { say } from '../../model/say.ts';
import type { FirstUnits } from '../html.ts';
import { keepFile } from '../keep-file.ts';
import type { CheckAnswer } from './check-worker.ts';
import { checkFiles } from './check-files.ts';
import { nameOf, outcomeHtml, verdict } from './outcome-html.ts';
import type { Outcome } from './outcome.ts';
import { takeFiles } from './drop-zone.ts';
import type { PageFile } from './page-files.ts';

if (language() !== 'en') await import('../../model/messages.ts');
const part = (id: string): HTMLElement => document.getElementById(id)!;

const drop = part('drop');
const told = part('told');
const result = part('result');
const heading = part('result-heading');
const { checks = '', example = '' } = drop.dataset;
const first = (document.documentElement.dataset['first'] ?? 'metric') as FirstUnits;
let outcome: Outcome | null = null;
let asked = 0;

async function check(gather: Promise<readonly PageFile[]>): Promise<void> {
  const mine = (asked += 1);
  told.classList.remove('unseen');
  told.textContent = say('Checking …');
  result.hidden = true;
  const answer = await gather.then(checked, (error: unknown): CheckAnswer => ({ fault: String(error) }));
  if (mine === asked) show(answer);
}

async function checked(files: readonly PageFile[]): Promise<CheckAnswer> {
  return files.length === 0 ? { fault: say('there was no file in it') } : checkFiles(files);
}

function show(answer: CheckAnswer): void {
  if (!('outcome' in answer)) {
    const reason = 'fault' in answer ? answer.fault : say('a folder is needed');
    told.textContent = say('This could not be checked: {reason}.', { reason });
    return;
  }
  ({ outcome } = answer);
  const said = verdict(outcome);
  // Read out, but not shown: the heading below says it.
  told.classList.add('unseen');
  told.textContent = `${said}.`;
  heading.textContent = said;
  part('problems').innerHTML = outcomeHtml(outcome, checks, first);
  part('keep').hidden = outcome.problems.length === 0;
  result.hidden = false;
  heading.focus();
}

function keep(ending: string, type: string, text: (outcome: Outcome) => string): void {
  if (outcome === null) return;
  const name = `${say('check of {name}', { name: nameOf(outcome) })}.${ending}`.replaceAll(' ', '-');
  keepFile(name, new Blob([text(outcome)], { type }));
}

async function exampleFiles(): Promise<PageFile[]> {
  const answer = await fetch(example);
  if (!answer.ok) throw new Error(say('the example is not there'));
  const blob = await answer.blob();
  return [{ path: 'example.zip', file: new File([blob], 'example.zip') }];
}

document.getElementById('try-example')?.addEventListener('click', () => void check(exampleFiles()));
part('keep-text').addEventListener('click', () =>
  keep('txt', 'text/plain', ({ problems }) => printReport(problems)),
);
part('keep-json').addEventListener('click', () =>
  keep('json', 'application/json', ({ problems }) => printJson(problems)),
);

takeFiles(drop, (gather) => void check(gather));
