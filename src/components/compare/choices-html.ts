import type { Choice } from '../../compare/choice/choice.ts';
import type { Offered, OfferedValue } from '../../compare/choice/offered.ts';
import { conditionWords } from '../../compare/choice/conditions.ts';
import { say, sayCount } from '../../model/say.ts';
import { escapeHtml } from '../html.ts';

/** What can be chosen from the trials of one crop and measure: plain fields of a form, set as the choice says. */
export function choicesHtml(there: Offered, choice: Choice, name: (cultivar: string) => string): string {
  const everyCultivar = checkboxes('cultivar', there.cultivars, choice.cultivars, name);
  const both =
    `<button type="button" data-all="cultivar">${escapeHtml(say('All'))}</button> ` +
    `<button type="button" data-none="cultivar">${escapeHtml(say('None'))}</button>`;
  const words = {
    cultivars: say('Cultivars'),
    trials: say('Which trials'),
    how: say('How they are compared and shown'),
  };
  return (
    folded(
      'cultivars',
      words.cultivars,
      choice.cultivars !== null,
      fieldset(words.cultivars, everyCultivar, both),
    ) +
    folded('trials', words.trials, hasFilters(choice), trialFields(there, choice)) +
    folded('how', words.how, hasManner(choice), mannerFields(there, choice, name))
  );
}

function trialFields(there: Offered, choice: Choice): string {
  const years = there.years.map((year) => ({ value: String(year), words: String(year) }));
  const ends =
    years.length < 2
      ? ''
      : select('from', say('From year'), years, String(choice.from ?? there.years[0])) +
        select('to', say('To year'), years, String(choice.to ?? there.years.at(-1)));
  const held = there.conditions.map(({ condition: { key, label }, values }) => {
    const options = values.map(({ value, trials }) => ({
      value,
      words: `${conditionWords(value)} ${inTrials(trials)}`,
    }));
    return select(key, say(label), [{ value: '', words: say('any') }, ...options], choice.held[key] ?? '');
  });
  const choosable = (values: readonly OfferedValue[]) => values.length > 1;
  return (
    (ends === ''
      ? ''
      : `<div class="fields" role="group" aria-label="${escapeHtml(say('Years'))}">${ends}</div>`) +
    (choosable(there.seasons)
      ? fieldset(say('Time of the year'), checkboxes('season', there.seasons, choice.seasons))
      : '') +
    (choosable(there.settings)
      ? fieldset(
          say('Setting'),
          checkboxes('setting', there.settings, choice.settings, (value) => say(value)),
        )
      : '') +
    (held.length === 0
      ? ''
      : `<fieldset><legend>${escapeHtml(say('Held fixed'))}</legend>` +
        `<p class="hint">${escapeHtml(say('Like with like: trials that differ are left out.'))}</p>` +
        `<div class="fields">${held.join('')}</div></fieldset>`)
  );
}

function mannerFields(there: Offered, choice: Choice, name: (cultivar: string) => string): string {
  const { against } = choice;
  const cultivars = there.cultivars.map(({ value }) => ({
    value: `cultivar:${value}`,
    words: say('from {cultivar}', { cultivar: name(value) }),
  }));
  const chosen = against === null ? '' : against === 'pairs' ? 'pairs' : `cultivar:${against.cultivar}`;
  const orders = [
    { value: 'mean', words: say('the highest adjusted mean first') },
    { value: 'name', words: say('by name') },
    { value: 'trials', words: say('those in most trials first') },
  ];
  const trials = [
    { value: 'fixed', words: say('as they were') },
    { value: 'sample', words: say('a sample of others that might have been (REML)') },
  ];
  const pairs = [
    { value: '', words: say('as suits how many there are') },
    { value: 'pairs', words: say('every pair') },
    ...cultivars,
  ];
  return (
    `<div class="fields">${select('order', say('Rows of the figure'), orders, choice.order)}` +
    select('against', say('Differences'), pairs, chosen) +
    `${select('trials', say('Trials taken as'), trials, choice.asSample ? 'sample' : 'fixed')}</div>` +
    `<div class="checks">${checkbox('weights', 'standard-errors', say('Each mean by its trial’s own standard error'), choice.weighted)}` +
    `${checkbox('show', 'everything', say('Show every row and column, however many'), choice.everything)}</div>`
  );
}

const inTrials = (trials: number) => `(${sayCount(trials, '{count} trial', '{count} trials')})`;

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
