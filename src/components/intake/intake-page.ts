/** The page that brings a spreadsheet in: reads it, shows how it is read, and hands out the trial's folder. */
import type { Destination, Given } from '../../intake/bring-in.ts';
import { newTrial } from '../../intake/known.ts';
import type { Mapping } from '../../intake/mapping.ts';
import type { NewTrialAnswers } from '../../intake/new-trial.ts';
import type { Target } from '../../intake/open-target.ts';
import { language } from '../../model/language.ts';
import { say } from '../../model/say.ts';
import { takeFiles } from '../check/drop-zone.ts';
import type { PageFile } from '../check/page-files.ts';
import { keepFile } from '../keep-file.ts';
import { today } from '../local-day.ts';
import { make, part } from '../weigh/dom.ts';
import type { Outcome } from './intake-work.ts';
import { mappingView } from './mapping-view.ts';
import { without } from '../../model/without.ts';
import { notUsedView, problemsView, rowsView, sheetView, verdict, wordsView } from './outcome-view.ts';

if (language() !== 'en') await import('../../model/messages.ts');

/** How one sheet is read at present. */
interface Reading {
  mapping: Mapping;
  guesses: readonly string[];
  isUsed: boolean;
}

const form = part<HTMLFormElement>('new-trial');
const told = part('told');
const readings = part('readings');
let given: Given | null = null;
let target: Target | null = null;
let sheets = new Map<string, Reading>();
let outcome: Outcome | null = null;

const work = () => import('./intake-work.ts');

const isNew = (): boolean => part<HTMLInputElement>('into-new').checked;

function destinationOf(): Destination | null {
  if (isNew()) return { answers: answersOf(), today: today() };
  return target === null ? null : { target };
}

/** What is said of a new trial; what is not said yet stands as it would be without. */
function answersOf(): NewTrialAnswers {
  const data = new FormData(form);
  const text = (name: string): string => {
    const value = data.get(name);
    return typeof value === 'string' ? value.trim() : '';
  };
  const crop = text('crop') || say('Crop');
  const harvested = text('harvested') || today();
  const season = text('season');
  return {
    title: text('title') || `${crop}, ${season} ${harvested.slice(0, 4)}`,
    question: text('question') || say('How much does each cultivar of {crop} yield?', { crop }),
    crop: text('species') === '' ? { name: crop } : { name: crop, species: text('species') },
    harvested,
    season,
    setting: text('setting') as NewTrialAnswers['setting'],
    site: text('site') || say('My garden'),
    person: text('person') || say('The grower'),
    licence: form.dataset['licence'] ?? 'CC-BY-4.0',
    allotted: text('allotted') as NewTrialAnswers['allotted'],
    randomised: text('randomised') === 'yes',
  };
}

/** What a new trial cannot do without, by the names of the fields. */
function unsaid(): string[] {
  if (!isNew()) return [];
  return ['crop', 'harvested'].filter(
    (name) => (form.elements.namedItem(name) as HTMLInputElement).value.trim() === '',
  );
}

async function propose(): Promise<void> {
  const destination = destinationOf();
  if (given === null || destination === null) {
    part('reading').hidden = true;
    part('result').hidden = true;
    return;
  }
  const { proposals } = await work();
  const known = 'target' in destination ? destination.target.known : newTrial;
  const remembered = 'target' in destination ? (destination.target.metadata.sources ?? []) : [];
  const found = proposals(given.workbook, known, remembered);
  sheets = new Map(found.map(({ mapping, guesses }) => [mapping.sheet, { mapping, guesses, isUsed: true }]));
  drawReadings();
  await refresh();
}

/** The fields of every sheet. */
function drawReadings(): void {
  const { workbook } = given!;
  part('reading').hidden = false;
  readings.replaceChildren(
    ...workbook.sheets.map((sheet) => {
      const reading = sheets.get(sheet.name);
      const heading = sheet.name === '' ? given!.name : say('Sheet {name}', { name: sheet.name });
      const section = make('section', { class: 'sheet-reading' }, make('h3', { text: heading }));
      if (reading === undefined) section.append(...withoutTable(sheet.name));
      else section.append(usedField(reading), fieldsOf(sheet.name, reading));
      return section;
    }),
  );
}

function usedField(reading: Reading): HTMLElement {
  const input = make('input', { attributes: { type: 'checkbox' } });
  input.checked = reading.isUsed;
  input.addEventListener('change', () => {
    reading.isUsed = input.checked;
    void refresh();
  });
  return make('label', { class: 'field tick' }, input, make('span', { text: say('Bring this table in') }));
}

/** A sheet on which no table was found can be given one by naming its headings. */
function withoutTable(name: string): HTMLElement[] {
  const input = make('input', { attributes: { type: 'text', autocomplete: 'off', inputmode: 'numeric' } });
  input.addEventListener('change', () => {
    void readAnew(name, input.value, false);
  });
  return [
    make('p', { text: say('No table of harvested plants is found on it.') }),
    make(
      'div',
      { class: 'fields' },
      make('label', { class: 'field' }, make('span', { text: say('Row or rows of headings') }), input),
    ),
  ];
}

function fieldsOf(name: string, reading: Reading): HTMLElement {
  const destination = destinationOf()!;
  const known = 'target' in destination ? destination.target.known : newTrial;
  const sheet = given!.workbook.sheets.find((one) => one.name === name)!;
  return mappingView(sheet, reading.mapping, known, reading.guesses, {
    change: (mapping) => {
      reading.mapping = { ...mapping, words: reading.mapping.words };
      void refresh();
    },
    readAnew: (headings, isTurned) => void readAnew(name, headings, isTurned),
  });
}

async function readAnew(name: string, headings: string, turned: boolean): Promise<void> {
  const destination = destinationOf();
  if (given === null || destination === null) return;
  const { corrected } = await work();
  const known = 'target' in destination ? destination.target.known : newTrial;
  const sheet = given.workbook.sheets.find((one) => one.name === name)!;
  const before = sheets.get(name)?.mapping ?? null;
  const line = turned === (before?.isTurned ?? false) ? headings : turned ? 'A' : '1';
  const mapping = corrected(sheet, null, { headings: line.toUpperCase(), turned }, known);
  if ('fault' in mapping) {
    told.textContent = say('Name a row, such as 3, or rows, such as 3-4.');
    return;
  }
  sheets.set(name, { mapping, guesses: [], isUsed: true });
  drawReadings();
  await refresh();
}

async function refresh(): Promise<void> {
  const destination = destinationOf();
  if (given === null || destination === null) return;
  const { outcomeOf } = await work();
  const used = [...sheets.values()].filter(({ isUsed }) => isUsed).map(({ mapping }) => mapping);
  outcome = outcomeOf(given, used, destination, today());
  drawOutcome(used);
}

function drawOutcome(used: readonly Mapping[]): void {
  const { intake, folder, problems } = outcome!;
  const words = wordsView(problems, used, explain);
  const lacking = unsaid();
  part('result').hidden = false;
  told.textContent = verdict(intake, problems);
  part('verdict').textContent = told.textContent;
  part('words').replaceChildren(...(words === null ? [] : [words]));
  part('problems').replaceChildren(problemsView(problems, intake.remarks));
  part('rows').replaceChildren(rowsView(intake));
  const notUsed = notUsedView(intake);
  part('not-used').hidden = notUsed === null;
  part('not-used-list').replaceChildren(...(notUsed === null ? [] : [notUsed]));
  part('sheets').replaceChildren(...given!.workbook.sheets.map((sheet) => sheetView(sheet, intake)));
  part('taking').hidden = folder === null || lacking.length > 0;
  part('lacking').hidden = folder === null || lacking.length === 0;
}

/** Says what a sign means, in every table. */
function explain(word: string, meant: string): void {
  for (const reading of sheets.values()) {
    const words = without(reading.mapping.words, word);
    reading.mapping = { ...reading.mapping, words: meant === '' ? words : { ...words, [word]: meant } };
  }
  void refresh();
}

async function openSheet(file: File): Promise<void> {
  told.textContent = say('Reading {name} …', { name: file.name });
  const { openSpreadsheet } = await work();
  const opened = await openSpreadsheet(file);
  given = typeof opened === 'string' ? null : opened;
  part('sheet-name').textContent = typeof opened === 'string' ? `${file.name}: ${opened}` : file.name;
  told.textContent = typeof opened === 'string' ? opened : '';
  await propose();
}

async function openTrial(files: readonly PageFile[]): Promise<void> {
  const { openFolder } = await work();
  const opened = await openFolder(files);
  target = typeof opened === 'string' ? null : opened;
  part<HTMLInputElement>('into-folder').checked = true;
  showDestination();
  part('target-name').textContent =
    typeof opened === 'string'
      ? opened
      : say('The spreadsheet goes into {title}.', { title: opened.metadata.title });
  await propose();
}

function showDestination(): void {
  form.hidden = !isNew();
  part('target-drop').hidden = isNew();
}

const isSpreadsheet = ({ path }: PageFile): boolean =>
  !path.includes('/') && /\.(?:xlsx|ods|csv|tsv|txt|xls)$/i.test(path);

const input = part<HTMLInputElement>('sheet-file');
part('choose-sheet').addEventListener('click', () => {
  input.click();
});
input.addEventListener('change', () => {
  const [file] = input.files ?? [];
  input.value = '';
  if (file !== undefined) void openSheet(file);
});
takeFiles(part('target-drop'), (gather) => {
  void gather.then((files) => {
    const [first, ...more] = files;
    if (first !== undefined && more.length === 0 && isSpreadsheet(first)) return openSheet(first.file);
    return openTrial(files);
  });
});
for (const id of ['into-new', 'into-folder'])
  part(id).addEventListener('change', () => {
    showDestination();
    void propose();
  });
form.addEventListener('change', () => void refresh());
form.addEventListener('submit', (event) => {
  event.preventDefault();
});
part('take-zip').addEventListener('click', () => {
  const destination = destinationOf();
  const folder = outcome?.folder;
  if (!folder || destination === null) return;
  void work().then(({ zipOf, idOfTrial }) => {
    keepFile(`${idOfTrial(destination)}.zip`, zipOf(destination, folder, today()));
  });
});
part('take-harvest').addEventListener('click', () => {
  const bytes = outcome?.folder?.get('harvest.csv');
  if (bytes) keepFile('harvest.csv', new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'text/csv' }));
});
showDestination();
part('intake').hidden = false;
