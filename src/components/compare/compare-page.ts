/** Compares anew what the reader chooses; the choice lives in the page's address. */
import { fromAddress, toAddress } from '../../compare/choice/address-of-choice.ts';
import { type Choice, wholeChoice } from '../../compare/choice/choice.ts';
import { compareChosen } from '../../compare/choice/compare-chosen.ts';
import { fittedChoice } from '../../compare/choice/fitted-choice.ts';
import { language } from '../../model/language.ts';
import { say } from '../../model/say.ts';
import { announcement } from '../../compare/words/choice-sentences.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { choicesHtml } from './choices-html.ts';
import { comparisonData, type PageComparison } from './comparison-data.ts';
import { figureFiles } from './figure-files.ts';
import { ownTrialsOf } from './own-trials.ts';
import { takeOwnTrials } from './own-trial.ts';
import { choosable, type PageCrop } from './page-crops.ts';
import { readChoices } from './read-choices.ts';
import { showComparison, showSection } from './show-comparison.ts';
import { keepTable } from './table-files.ts';

// A comparison drawn anew is in the page's language, as the published one is.
if (language() !== 'en') await import('../../model/messages.ts');
const form = document.querySelector<HTMLFormElement>('#choose');
if (form) run(form);

/** A reader who chooses is not spoken to before a pause (ms). */
const pause = 500;

function run(fields: HTMLFormElement): void {
  const part = <Kind extends HTMLElement>(id: string) => document.getElementById(id) as Kind;
  const crops = JSON.parse(part('crops').textContent) as PageCrop[];
  const data = comparisonData(crops);
  const cropsOfAddress = choosable(crops);
  const told = part('compare-told');
  const notKnown = part('not-known');
  /** What is shown; null until the data of the page as published have come. */
  let shown: { choice: Choice; comparison: PageComparison; entry: Seasons | null } | null = null;
  /** Each opening has a number: data that come after a later one was asked for are dropped. */
  let asked = 0;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  /** Fetches what a choice needs and shows it. Null where another choice came in between. */
  async function open(
    wish: Choice,
    without: readonly string[] = [],
    unknown: readonly string[] = [],
    draw = true,
  ): Promise<Choice | null> {
    const own = (asked += 1);
    const comparison = await data.load(wish.crop, wish.measure);
    if (own !== asked) return null;
    const fitted = fittedChoice(wish, without, comparison.offered);
    showFields(fitted.choice, comparison);
    showUnknown([...unknown, ...fitted.unknown]);
    if (draw) show(fitted.choice, comparison);
    else shown = { choice: fitted.choice, comparison, entry: compareChosen(comparison.group, fitted.choice) };
    return fitted.choice;
  }

  function show(choice: Choice, comparison: PageComparison): void {
    const entry = compareChosen(comparison.group, choice);
    shown = { choice, comparison, entry };
    showComparison(choice, entry, comparison);
    tell(announcement(entry, comparison.name));
  }

  function tell(line: string): void {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      told.textContent = line;
    }, pause);
  }

  function showFields(choice: Choice, comparison: PageComparison): void {
    const { crop, measure, replicated } = fields.elements as unknown as Fields;
    crop.value = choice.crop;
    const measures = crops.find(({ id }) => id === choice.crop)!.measures;
    measure.replaceChildren(...measures.map((each) => new Option(each.words, each.measure)));
    measure.value = choice.measure;
    replicated.checked = choice.onlyReplicated;
    const choices = part('choices');
    const open = [...choices.querySelectorAll('details')].filter((each) => each.open);
    choices.innerHTML = choicesHtml(comparison.offered, choice, comparison.name);
    for (const { dataset } of open) {
      choices.querySelector(`[data-choices="${dataset['choices']!}"]`)?.setAttribute('open', '');
    }
  }

  function showUnknown(words: readonly string[]): void {
    notKnown.hidden = words.length === 0;
    notKnown.textContent = say('The address names what is not there, and is read without it: {words}.', {
      words: words.join(', '),
    });
  }

  /** What stands in the fields, shown and written into the address as a new step of the way back. */
  async function settle(): Promise<void> {
    if (shown === null) return;
    const { comparison } = shown;
    const read = readChoices(fields, comparison.offered);
    if (read.crop !== shown.choice.crop || read.measure !== shown.choice.measure) {
      const measures = crops.find(({ id }) => id === read.crop)!.measures;
      const measure = measures.find((each) => each.measure === read.measure) ?? measures[0]!;
      // Another crop has other cultivars and trials; how they are compared stays as it was chosen.
      const { onlyReplicated, asSample, weighted, order, everything } = read;
      const manner = { onlyReplicated, asSample, weighted, order, everything };
      const kept = read.crop === shown.choice.crop ? read : wholeChoice(read.crop, measure.measure);
      if ((await open({ ...kept, ...manner, measure: measure.measure }).catch(fail)) === null) return;
    } else {
      show(read, comparison);
      showUnknown([]);
    }
    writeAddress();
  }

  function writeAddress(): void {
    const { choice, comparison } = shown!;
    const all = comparison.offered.cultivars.map(({ value }) => value);
    const query = toAddress(choice, cropsOfAddress, all);
    if (location.search.replace('?', '') === query && location.hash === '') return;
    history.pushState(null, '', query === '' ? location.pathname : `?${query}`);
  }

  /** Shows what the address says; as published where it says nothing, so that nothing is drawn twice. */
  async function load(redraw: boolean): Promise<void> {
    const { choice, without, unknown } = fromAddress(location.search, cropsOfAddress);
    const anchor = crops.find(({ id }) => location.hash === `#${id}` && location.search === '');
    const wish = anchor ? wholeChoice(anchor.id, anchor.measures[0]!.measure) : choice;
    const draw = redraw || location.search !== '';
    if (!draw) showSection(wish.crop);
    await open(wish, without, unknown, draw).catch(fail);
  }

  function fail(): null {
    told.classList.remove('unseen');
    tell(say('The data could not be fetched: what stands here is the comparison as published.'));
    return null;
  }

  fields.addEventListener('change', () => void settle());
  fields.addEventListener('submit', (event) => event.preventDefault());
  fields.addEventListener('reset', (event) => {
    event.preventDefault();
    const [measure] = crops.find(({ id }) => id === shown?.choice.crop)?.measures ?? [];
    if (!shown || !measure) return;
    void open(wholeChoice(shown.choice.crop, measure.measure)).then((done) => done && writeAddress(), fail);
  });
  fields.addEventListener('click', ({ target }) => {
    const { all, none } = target instanceof HTMLButtonElement ? target.dataset : {};
    const name = all ?? none;
    if (name === undefined) return;
    for (const box of fields.querySelectorAll<HTMLInputElement>(`input[name="${name}"]`)) {
      box.checked = all !== undefined;
    }
    void settle();
  });
  document.addEventListener('click', ({ target }) => {
    const { table } = target instanceof HTMLButtonElement ? target.dataset : {};
    if (table !== undefined && shown?.entry) keepTable(table, shown.entry, shown.choice, shown.comparison);
  });
  figureFiles();
  addEventListener('popstate', () => void load(true));
  takeOwnTrials(
    ownTrialsOf(crops, data, async (crop, measure) => {
      const choice = wholeChoice(crop, measure);
      const current = shown?.choice.crop === crop && shown.choice.measure === measure;
      if ((await open(current ? shown!.choice : choice)) !== null) writeAddress();
    }),
  );
  void load(false);
}

interface Fields {
  crop: HTMLSelectElement;
  measure: HTMLSelectElement;
  replicated: HTMLInputElement;
}
