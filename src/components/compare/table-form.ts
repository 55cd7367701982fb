/** Asks what a table of weights does not say of its trial. */
import type { TableAnswers } from '../../check/folder-of-table.ts';
import { say } from '../../model/say.ts';
import type { TableQuestions } from '../check/table-questions.ts';

const form = document.querySelector<HTMLFormElement>('#own-table')!;
let settle: ((answers: TableAnswers | null) => void) | null = null;

/** Shows the questions, set as the table itself answers them, and waits for the reader. Null where the table is left. */
export function askAboutTable(questions: TableQuestions): Promise<TableAnswers | null> {
  settle?.(null);
  const { unit, harvested, allotted } = form.elements as unknown as Fields;
  unit.value = questions.unit ?? 'g';
  harvested.value = questions.date ?? '';
  for (const option of allotted.options) option.disabled = option.value === 'plot' && !questions.hasPlots;
  allotted.value = questions.hasPlots ? 'plot' : 'container';
  form.querySelector('#own-table-weights')!.textContent = say(
    'The column “{column}” is taken for the weights.',
    { column: questions.weight },
  );
  form.hidden = false;
  form.querySelector<HTMLElement>('#own-table-heading')!.focus();
  return new Promise((done) => {
    settle = done;
  });
}

/** Takes the questions away. */
export function closeTableForm(): void {
  answer(null);
}

function answer(answers: TableAnswers | null): void {
  form.hidden = true;
  settle?.(answers);
  settle = null;
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
  const { crop, unit, harvested, season, setting, allotted, randomised } = form.elements as unknown as Fields;
  const species = crop.value;
  const name = crop.selectedOptions[0]?.dataset['name'] ?? species;
  answer({
    crop: name === species ? { name } : { name, species },
    harvested: harvested.value,
    season: season.value,
    setting: setting.value as TableAnswers['setting'],
    unit: unit.value as TableAnswers['unit'],
    allotted: allotted.value as TableAnswers['allotted'],
    randomised: randomised.value === 'yes',
  });
});
document.querySelector('#own-table-leave')!.addEventListener('click', closeTableForm);

interface Fields {
  crop: HTMLSelectElement;
  unit: HTMLSelectElement;
  harvested: HTMLInputElement;
  season: HTMLSelectElement;
  setting: HTMLSelectElement;
  allotted: HTMLSelectElement;
  randomised: HTMLSelectElement;
}
