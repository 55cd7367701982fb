import type { Choice } from '../../compare/choice/choice.ts';
import type { Offered, OfferedValue } from '../../compare/choice/offered.ts';
import { escapeHtml } from '../html.ts';

/** What can be chosen from the trials of one crop and measure: plain fields of a form, set as the choice says. */
export function choicesHtml(there: Offered, choice: Choice, name: (cultivar: string) => string): string {
  const everyCultivar = checkboxes('cultivar', there.cultivars, choice.cultivars, name);
  const both =
    '<button type="button" data-all="cultivar">All</button> <button type="button" data-none="cultivar">None</button>';
  return (
    folded('cultivars', 'Cultivars', choice.cultivars !== null, fieldset('Cultivars', everyCultivar, both)) +
    folded('trials', 'Which trials', hasFilters(choice), trialFields(there, choice)) +
    folded('how', 'How they are compared and shown', hasManner(choice), mannerFields(there, choice, name))
  );
}

function trialFields(there: Offered, choice: Choice): string {
  const years = there.years.map((year) => ({ value: String(year), words: String(year) }));
  const ends =
    years.length < 2
      ? ''
      : select('from', 'From', years, String(choice.from ?? there.years[0])) +
        select('to', 'To', years, String(choice.to ?? there.years.at(-1)));
  const held = there.conditions.map(({ condition: { key, label }, values }) => {
    const options = values.map(({ value, trials }) => ({ value, words: `${value} ${inTrials(trials)}` }));
    return select(key, label, [{ value: '', words: 'any' }, ...options], choice.held[key] ?? '');
  });
  const choosable = (values: readonly OfferedValue[]) => values.length > 1;
  return (
    (ends === '' ? '' : `<div class="fields" role="group" aria-label="Years">${ends}</div>`) +
    (choosable(there.seasons)
      ? fieldset('Time of the year', checkboxes('season', there.seasons, choice.seasons))
      : '') +
    (choosable(there.settings)
      ? fieldset('Setting', checkboxes('setting', there.settings, choice.settings))
      : '') +
    (held.length === 0
      ? ''
      : `<fieldset><legend>Held fixed</legend><p class="hint">Like with like: trials that differ are left out.</p><div class="fields">${held.join('')}</div></fieldset>`)
  );
}

function mannerFields(there: Offered, choice: Choice, name: (cultivar: string) => string): string {
  const { against } = choice;
  const cultivars = there.cultivars.map(({ value }) => ({
    value: `cultivar:${value}`,
    words: `from ${name(value)}`,
  }));
  const chosen = against === null ? '' : against === 'pairs' ? 'pairs' : `cultivar:${against.cultivar}`;
  const orders = [
    { value: 'mean', words: 'the highest adjusted mean first' },
    { value: 'name', words: 'by name' },
    { value: 'trials', words: 'those in most trials first' },
  ];
  const trials = [
    { value: 'fixed', words: 'as they were' },
    { value: 'sample', words: 'a sample of others that might have been (REML)' },
  ];
  const pairs = [
    { value: '', words: 'as suits how many there are' },
    { value: 'pairs', words: 'every pair' },
    ...cultivars,
  ];
  return (
    `<div class="fields">${select('order', 'Rows of the figure', orders, choice.order)}` +
    select('against', 'Differences', pairs, chosen) +
    `${select('trials', 'Trials taken as', trials, choice.asSample ? 'sample' : 'fixed')}</div>` +
    `<div class="checks">${checkbox('weights', 'standard-errors', 'Each mean by its trial’s own standard error', choice.weighted)}` +
    `${checkbox('show', 'everything', 'Show every row and column, however many', choice.everything)}</div>`
  );
}

const inTrials = (trials: number) => `(${String(trials)} ${trials === 1 ? 'trial' : 'trials'})`;

function folded(key: string, summary: string, open: boolean, content: string): string {
  return `<details data-choices="${key}"${open ? ' open' : ''}><summary>${escapeHtml(summary)}</summary>${content}</details>`;
}

function fieldset(legend: string, content: string, tools = ''): string {
  const both = tools === '' ? '' : `<p class="all-none">${tools}</p>`;
  return `<fieldset><legend>${escapeHtml(legend)}</legend>${both}<div class="checks">${content}</div></fieldset>`;
}

function checkboxes(
  key: string,
  values: readonly OfferedValue[],
  chosen: readonly string[] | null,
  words: (value: string) => string = (value) => value,
): string {
  return values
    .map(({ value, trials }) =>
      checkbox(key, value, `${words(value)} ${inTrials(trials)}`, chosen?.includes(value) ?? true),
    )
    .join('');
}

function checkbox(name: string, value: string, words: string, checked: boolean): string {
  return `<label class="check"><input type="checkbox" name="${name}" value="${escapeHtml(value)}"${checked ? ' checked' : ''} /> <span>${escapeHtml(words)}</span></label>`;
}

function select(
  name: string,
  label: string,
  options: readonly { value: string; words: string }[],
  chosen: string,
): string {
  const id = `choose-${name}`;
  const written = options.map(
    ({ value, words }) =>
      `<option value="${escapeHtml(value)}"${value === chosen ? ' selected' : ''}>${escapeHtml(words)}</option>`,
  );
  return `<div class="field"><label for="${id}">${escapeHtml(label)}</label><select id="${id}" name="${name}">${written.join('')}</select></div>`;
}

function hasFilters({ from, to, seasons, settings, held }: Choice): boolean {
  return (
    from !== null || to !== null || seasons !== null || settings !== null || Object.keys(held).length > 0
  );
}

function hasManner({ order, against, asSample, weighted, everything }: Choice): boolean {
  return order !== 'mean' || against !== null || asSample || weighted || everything;
}
