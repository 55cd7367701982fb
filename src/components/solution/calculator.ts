import { language } from '../../model/language.ts';
import { sayCount } from '../../model/say.ts';
import { topicsOfRecipe } from '../../compute/cautions/topics-of.ts';
import { answersHtml } from './answers-html.ts';
import { blankSalt, type CalculatorState, fromAddress, singleFields, toAddress } from './calculator-state.ts';
import { changeUnits } from './change-units.ts';
import { type InputFault, readInputs } from './read-inputs.ts';
import { saltRows } from './salt-rows.ts';
import { showFaults } from './show-faults.ts';

/** Reckons a nutrient solution as it is typed, and keeps what is typed in the address. */
const form = document.querySelector<HTMLFormElement>('#calculator');
if (form) void start(form);

/** Words of another language than English come with a file of their own, where the page is in one. */
async function start(calculator: HTMLFormElement): Promise<void> {
  if (language() !== 'en') await import('../../model/messages.ts');
  run(calculator);
}

/** A reader who types is let finish. */
const pause = 300;

function run(calculator: HTMLFormElement): void {
  const part = <Kind extends Element>(selector: string) => document.querySelector<Kind>(selector)!;
  const answers = part<HTMLElement>('#answers');
  const contents = part<HTMLElement>('#contents');
  const told = part<HTMLElement>('#told');
  const starts = JSON.parse(part('#starts').textContent) as CalculatorState[];
  const cautions = document.querySelectorAll<HTMLElement>('.cautions [data-topic]');
  const rows = saltRows(part('#salts'), part<HTMLTemplateElement>('#salt'), () => {
    settle('salts');
  });
  const single = (name: string) =>
    calculator.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement;
  /** The units that the fields are in, to turn them into others. */
  let units = { per: 'g/L', unit: 'L' };
  /** The field whose typing is one step of the way back. */
  let typing = '';
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function read(): CalculatorState {
    const fields = Object.fromEntries(singleFields.map((name) => [name, single(name).value]));
    return { ...(fields as Record<(typeof singleFields)[number], string>), salts: rows.read() };
  }

  function show(state: CalculatorState): void {
    for (const name of singleFields) single(name).value = state[name];
    // A start that this site does not have (any more) is a recipe of the reader's own.
    if (single('trial').value !== state.trial) single('trial').value = '';
    units = { per: state.per, unit: state.unit };
    rows.show(state.salts.length === 0 ? [blankSalt] : state.salts);
    rows.sayUnit(state.per);
  }

  function reckon(): void {
    const state = read();
    const inputs = readInputs(state);
    const faults = 'recipe' in inputs ? [] : inputs;
    showFaults(calculator, faults, fieldOf);
    answers.hidden = contents.hidden = faults.length > 0;
    if ('recipe' in inputs) {
      const first = document.documentElement.dataset['first'] === 'us' ? 'us' : 'metric';
      const found = answersHtml(inputs, state.title.trim(), first);
      answers.innerHTML = found.card;
      contents.innerHTML = found.contents;
      tell(found.told);
      const topics: readonly string[] = topicsOfRecipe(inputs.recipe);
      for (const caution of cautions) caution.hidden = !topics.includes(caution.dataset['topic'] ?? '');
    } else {
      tell(
        sayCount(
          faults.length,
          'Nothing is reckoned: {count} field is not understood, see beside it.',
          'Nothing is reckoned: {count} fields are not understood, see beside them.',
        ),
      );
    }
  }

  function tell(line: string): void {
    if (told.textContent !== line) told.textContent = line;
  }

  function fieldOf({ field, salt }: InputFault): HTMLInputElement | HTMLSelectElement | null {
    return salt === null ? single(field) : rows.field(salt, field);
  }

  /** Reckons, and writes the fields into the address: a new step of the way back, or the same while one field is typed in. */
  function settle(field: string): void {
    clearTimeout(waiting);
    reckon();
    const query = toAddress(read());
    if (location.search === `?${query}`) return;
    if (typing === field) history.replaceState(null, '', `?${query}`);
    else history.pushState(null, '', `?${query}`);
    typing = field;
  }

  function load(): void {
    const named = new URLSearchParams(location.search).get('trial');
    const start = starts.find(({ trial }) => trial === named) ?? starts[0]!;
    const us = document.documentElement.dataset['units'] === 'us';
    const fresh = us ? changeUnits(start, { per: 'oz/100gal', unit: 'gal' }) : start;
    show(fromAddress(location.search) ?? fresh);
    typing = '';
    reckon();
  }

  calculator.addEventListener('input', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      settle(target.id);
    }, pause);
  });
  calculator.addEventListener('change', ({ target }) => {
    if (target instanceof HTMLSelectElement) choose(target);
    settle((target as HTMLElement).id);
    typing = '';
  });
  calculator.addEventListener('submit', (event) => {
    event.preventDefault();
    settle('');
  });

  function choose({ name, value }: HTMLSelectElement): void {
    const before = { ...read(), ...units };
    if (name === 'trial') {
      const start = starts.find(({ trial }) => trial === value);
      const state = start ?? { ...before, title: '', salts: [], water: '', trial: '' };
      show(start ? changeUnits(state, units) : state);
    } else show(changeUnits(before, { ...units, [name]: value }));
  }

  part('#add-salt').addEventListener('click', () => {
    rows.add();
  });
  part('#print').addEventListener('click', () => {
    print();
  });
  addEventListener('popstate', load);
  load();
  calculator.hidden = false;
  part<HTMLElement>('#no-script').hidden = true;
}
