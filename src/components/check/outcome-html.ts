/** What the check found, as HTML: the same words as the command line's, and the line that each speaks of. */
import { printCount } from '../../check/print-problem.ts';
import { hasError, type Problem, type Severity } from '../../model/problem.ts';
import { say, sayCount } from '../../model/say.ts';
import { escapeHtml, wordsHtml, type FirstUnits } from '../html.ts';
import type { FileProblems, Outcome, ShownProblem, TrialOutcome } from './outcome.ts';

const severities: Readonly<Record<Severity, string>> = { error: 'Error', warning: 'Warning', note: 'Note' };

/** What was checked, as a reader would call it. */
export function nameOf({ kind, names }: Outcome): string {
  if (kind === 'trial') return names[0] ?? say('what was given');
  return sayCount(names.length, 'the folder of {count} trial', 'the folder of {count} trials');
}

/** The result in one sentence, for the heading and to be read out. */
export function verdict(outcome: Outcome): string {
  const name = nameOf(outcome);
  if (outcome.problems.length === 0) return say('Nothing to mend: {name}', { name });
  const found = printCount(outcome.problems);
  return say(
    hasError(outcome.problems) ? 'To be mended: {name} ({found})' : 'Fit to be published: {name} ({found})',
    { name, found },
  );
}

/** All of the result below its heading. */
export function outcomeHtml(outcome: Outcome, checks: string, first: FirstUnits): string {
  return problemsHtml(outcome, checks) + outcome.trials.map((trial) => trialHtml(trial, first)).join('');
}

/**
 * The problems, file by file.
 *
 * @param checks the address of the list of checks
 */
export function problemsHtml({ files }: Outcome, checks: string): string {
  return files.map((file) => fileHtml(file, checks)).join('');
}

function fileHtml({ file, count, more, shown }: FileProblems, checks: string): string {
  const rest =
    more > 0
      ? `<p class="note">${escapeHtml(say('And {more} more in this file; the text to keep has them all.', { more }))}</p>`
      : '';
  return (
    `<section class="file-problems"><h3><code>${escapeHtml(file)}</code> ` +
    `<span class="unit">${escapeHtml(count)}</span></h3>` +
    `<ol>${shown.map((one) => problemHtml(one, checks)).join('')}</ol>${rest}</section>`
  );
}

function problemHtml({ problem, excerpt, title, meaning }: ShownProblem, checks: string): string {
  const line =
    excerpt === null
      ? ''
      : `<p class="excerpt"><code>${escapeHtml(excerpt.before)}` +
        `${excerpt.marked === '' ? '' : `<mark>${escapeHtml(excerpt.marked)}</mark>`}` +
        `${escapeHtml(excerpt.after)}</code></p>`;
  return (
    `<li class="problem severity-${problem.severity}">` +
    `<p class="problem-place"><strong>${escapeHtml(say(severities[problem.severity]))}</strong> ${placeHtml(problem)}</p>` +
    `<p class="message">${escapeHtml(problem.message)}</p>${line}${pairHtml(problem)}` +
    (problem.hint === null ? '' : `<p>${escapeHtml(problem.hint)}</p>`) +
    `<details><summary>${escapeHtml(title)}</summary><p>${escapeHtml(meaning)} ` +
    `<a href="${escapeHtml(`${checks}#${problem.rule}`)}" target="_blank" rel="noopener">` +
    `<code>${escapeHtml(problem.rule)}</code> ${escapeHtml(say('in the list of checks (opens beside this page)'))}</a></p></details></li>`
  );
}

function placeHtml({ line, column }: Problem): string {
  if (line === null) return escapeHtml(say('the whole file'));
  return escapeHtml(
    column === null ? say('line {line}', { line }) : say('line {line}, column {column}', { line, column }),
  );
}

/** What stands there and what should, where both are short enough to be set beside each other. */
function pairHtml({ found, expected }: Problem): string {
  if (expected === null || expected === '') return '';
  const stands =
    found === null || found === ''
      ? ''
      : `<dt>${escapeHtml(say('Stands there'))}</dt><dd><code>${escapeHtml(found)}</code></dd>`;
  return `<dl class="pair">${stands}<dt>${escapeHtml(say('To be written'))}</dt><dd><code>${escapeHtml(expected)}</code></dd></dl>`;
}

function trialHtml(trial: TrialOutcome, first: FirstUnits): string {
  const { id, title, finding, restsOn } = trial;
  return (
    `<section class="would-publish"><h3>${escapeHtml(say('What would be published of {title}', { title }))}</h3>` +
    (finding === null ? '' : `<p class="finding">${wordsHtml(finding, first)}</p>`) +
    (restsOn === null ? '' : `<p>${wordsHtml(restsOn, first)}</p>`) +
    `<ul>${published(trial, id)
      .map((item) => `<li>${item}</li>`)
      .join('')}</ul></section>`
  );
}

function published({ counts, queries, status }: TrialOutcome, id: string): string[] {
  const page = `trials/${id}/`;
  const open =
    queries === 0
      ? say('No open query beside it.')
      : sayCount(
          queries,
          'One open query beside it: each warning and each accepted problem, in the words above.',
          '{count} open queries beside it: each warning and each accepted problem, in the words above.',
        );
  if (counts === null) {
    const unfinished = say('A page of the trial at {page}, and no dataset: it is {status}.', {
      status: say(status),
    });
    return [withPlace(unfinished, page), escapeHtml(open)];
  }
  const { weighed, set } = counts;
  return [
    withPlace(
      say('A page of the trial at {page}, with its figures, tables and every step of the reckoning.'),
      page,
    ),
    withPlace(
      say('The weights as they stand, {weighed} of {set} set and weighed, with their metadata, at {page}.', {
        weighed,
        set,
      }),
      `data/${id}/`,
    ),
    escapeHtml(open),
  ];
}

/** A sentence with the place in it that is called page. */
function withPlace(sentence: string, page: string): string {
  return escapeHtml(sentence).replace('{page}', () => `<code>${escapeHtml(page)}</code>`);
}
