/** Searches while the reader types; what is asked for lives in the page's address. */
import { type FoundPage, loadSearch, type SearchScript } from './index-files.ts';
import { resultEntry } from './result-entry.ts';

/** What is told of an answer, in the site's language, with {count} and {words} in it. */
type Sentences = Readonly<Record<'none' | 'one' | 'several' | 'broken', string>>;

/** Results shown at once, and added by each press of the button below them. */
const atOnce = 20;
/** Letters typed in one breath are searched for once (ms). */
const breath = 120;

const form = document.querySelector<HTMLFormElement>('form.search');
const list = document.querySelector<HTMLOListElement>('#search-results');
const told = document.querySelector<HTMLElement>('#search-told');
const more = document.querySelector<HTMLButtonElement>('#search-more');
if (form && list && told && more) run(form, list, told, more);

function run(
  ask: HTMLFormElement,
  results: HTMLOListElement,
  status: HTMLElement,
  further: HTMLButtonElement,
): void {
  const input = ask.querySelector<HTMLInputElement>('input[type="search"]')!;
  const { index = '', kinds = '{}', sentences = '{}' } = results.dataset;
  const kindNames = JSON.parse(kinds) as Record<string, string>;
  const sayings = JSON.parse(sentences) as Sentences;
  let script: Promise<SearchScript> | undefined;
  let found: readonly { data(): Promise<FoundPage> }[] = [];
  /** Each search has a number: an answer that comes after a later question was asked is dropped. */
  let asked = 0;
  let waiting: number | undefined;

  const load = () => (script ??= loadSearch(index));

  async function search(): Promise<void> {
    const words = input.value.trim();
    const own = (asked += 1);
    writeAddress(words);
    if (words === '') return show([], [], '');
    try {
      const answer = (await (await load()).search(words)).results;
      const first = await Promise.all(answer.slice(0, atOnce).map((each) => each.data()));
      if (own === asked) show(answer, first, countOf(answer.length, words, sayings));
    } catch {
      script = undefined;
      if (own !== asked) return;
      show([], [], sayings.broken);
    }
  }

  function show(all: typeof found, first: readonly FoundPage[], sentence: string): void {
    found = all;
    results.replaceChildren(...first.map((page) => resultEntry(page, kindNames)));
    further.hidden = found.length <= first.length;
    status.textContent = sentence;
  }

  async function showMore(): Promise<void> {
    const own = asked;
    const from = results.children.length;
    const next = await Promise.all(found.slice(from, from + atOnce).map((each) => each.data()));
    if (own !== asked) return;
    results.append(...next.map((page) => resultEntry(page, kindNames)));
    further.hidden = found.length <= results.children.length;
    results.children[from]?.querySelector('a')?.focus();
  }

  /** Down and up go from the box through the results and back. */
  function walk(event: KeyboardEvent): void {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    const stops: HTMLElement[] = [input, ...results.querySelectorAll('a')];
    const now = stops.findIndex((stop) => stop === document.activeElement);
    const next = stops[now + step];
    if (step === 0 || now < 0 || next === undefined) return;
    event.preventDefault();
    next.focus();
  }

  input.addEventListener('focus', () => void load().catch(() => (script = undefined)));
  input.addEventListener('input', () => {
    clearTimeout(waiting);
    waiting = window.setTimeout(() => void search(), breath);
  });
  ask.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    void search();
  });
  further.addEventListener('click', () => void showMore());
  document.addEventListener('keydown', walk);

  const words = new URLSearchParams(location.search).get('q') ?? '';
  // A browser that goes back may have kept what was typed; the address is what was asked.
  input.value = words;
  if (words.trim() === '') input.focus();
  else void search();
}

function writeAddress(words: string): void {
  const address = words === '' ? location.pathname : `?${String(new URLSearchParams({ q: words }))}`;
  history.replaceState(null, '', address);
}

function countOf(count: number, words: string, { none, one, several }: Sentences): string {
  const sentence = count === 0 ? none : count === 1 ? one : several;
  // By a function, so that what was typed is never read as a pattern.
  return sentence.replace('{count}', String(count)).replace('{words}', () => words);
}
