/** The page of checks: takes files, has them checked beside the page, and shows what was found. */
import { printJson, printReport } from '../../check/print-problem.ts';
import type { FirstUnits } from '../html.ts';
import type { CheckAnswer } from './check-worker.ts';
import { checkFiles } from './check-files.ts';
import { nameOf, outcomeHtml, verdict } from './outcome-html.ts';
import type { Outcome } from './outcome.ts';
import { chosenFiles, droppedFiles, type PageFile } from './page-files.ts';

const part = <Kind extends HTMLElement>(id: string): Kind => document.getElementById(id) as Kind;

const drop = part('drop');
const told = part('told');
const result = part('result');
const heading = part('result-heading');
const inputs = [part<HTMLInputElement>('folder'), part<HTMLInputElement>('files')];
const { checks = '', example = '' } = drop.dataset;
const first = (document.documentElement.dataset['first'] ?? 'metric') as FirstUnits;
let outcome: Outcome | null = null;
let asked = 0;

async function check(gather: () => Promise<readonly PageFile[]>): Promise<void> {
  const mine = (asked += 1);
  told.classList.remove('unseen');
  told.textContent = 'Checking …';
  result.hidden = true;
  const answer = await gather().then(checked, (error: unknown): CheckAnswer => ({ fault: String(error) }));
  if (mine === asked) show(answer);
}

async function checked(files: readonly PageFile[]): Promise<CheckAnswer> {
  return files.length === 0 ? { fault: 'there was no file in it' } : checkFiles(files);
}

function show(answer: CheckAnswer): void {
  if ('fault' in answer) {
    told.textContent = `This could not be checked: ${answer.fault}.`;
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
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text(outcome)], { type }));
  link.download = `check of ${nameOf(outcome)}.${ending}`.replaceAll(' ', '-');
  link.click();
  // Let go of at once, it may be gone before the browser has begun to save it.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

async function exampleFiles(): Promise<PageFile[]> {
  const answer = await fetch(example);
  if (!answer.ok) throw new Error('the example is not there');
  const blob = await answer.blob();
  return [{ path: 'example.zip', file: new File([blob], 'example.zip') }];
}

for (const input of inputs) {
  part(`choose-${input.id}`).addEventListener('click', () => input.click());
  input.addEventListener('change', () => {
    const files = chosenFiles(input.files);
    // The same folder, mended, can then be chosen again.
    input.value = '';
    if (files.length > 0) void check(() => Promise.resolve(files));
  });
}

document.getElementById('try-example')?.addEventListener('click', () => void check(exampleFiles));
part('keep-text').addEventListener('click', () =>
  keep('txt', 'text/plain', ({ problems }) => printReport(problems)),
);
part('keep-json').addEventListener('click', () =>
  keep('json', 'application/json', ({ problems }) => printJson(problems)),
);

// Anywhere on the page will do: a folder dropped beside the frame must not make the browser leave the page.
let inside = 0;
const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
document.addEventListener('dragover', (event) => {
  if (holdsFiles(event)) event.preventDefault();
});
document.addEventListener('dragenter', (event) => {
  if (holdsFiles(event)) drop.classList.toggle('over', (inside += 1) > 0);
});
document.addEventListener('dragleave', (event) => {
  if (holdsFiles(event)) drop.classList.toggle('over', (inside -= 1) > 0);
});
document.addEventListener('drop', (event) => {
  const { dataTransfer } = event;
  if (dataTransfer === null || !holdsFiles(event)) return;
  event.preventDefault();
  inside = 0;
  drop.classList.remove('over');
  const files = droppedFiles(dataTransfer);
  void check(() => files);
});

drop.hidden = false;
