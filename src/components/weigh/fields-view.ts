/** What is being typed: a button for each variable, the one that the keys type marked, and the words of the large key. */
import { say } from '../../model/say.ts';
import type { ValueForm } from '../../weigh/value-form.ts';
import { button, make, part } from './dom.ts';
import type { Draft } from './store.ts';

export interface FieldsView {
  show(forms: readonly ValueForm[], draft: Draft): void;
  /** Draws all anew when next shown, for another trial. */
  forget(): void;
}

/**
 * @param onChoose is given the index of the variable that was tapped
 * @param onMark is given the mark that was tapped
 */
export function fieldsView(onChoose: (index: number) => void, onMark: (mark: string) => void): FieldsView {
  const [fields, next, marks] = [part('weigh-fields'), part('weigh-next'), part('weigh-marks')];
  /** The variable whose marks stand there. */
  let shown = '';
  const build = (forms: readonly ValueForm[]): void => {
    // More than two would be too narrow to read beside one another: they are scrolled.
    fields.classList.toggle('many', forms.length > 2);
    fields.replaceChildren(
      ...forms.map((form, index) =>
        make(
          'button',
          { attributes: { type: 'button' }, onClick: () => onChoose(index) },
          make('span', { class: 'name', text: form.name }),
          make('span', { class: 'value' }),
          make('span', { class: 'unit', text: form.unit }),
        ),
      ),
    );
  };
  const showMarks = (form: ValueForm | undefined, { values, field }: Draft): void => {
    const value = values[form?.id ?? ''] ?? '';
    if (form !== undefined && form.id !== shown) {
      shown = form.id;
      marks.replaceChildren(
        ...form.marks.map((mark) =>
          button(markWords(mark), () => onMark(mark.value), { 'data-mark': mark.value }),
        ),
      );
      fields.children[field]?.scrollIntoView({ block: 'nearest', inline: 'center' });
    }
    for (const mark of marks.children)
      mark.setAttribute('aria-pressed', String(mark.getAttribute('data-mark') === value));
    marks.hidden = form === undefined || form.marks.length === 0;
    // One row for what is said in its place, so that the keys stay where they are.
    part('weigh-meaning').classList.toggle('row', field > 0 && marks.hidden);
    // What became of a plant is said before anything of it is told.
    part('weigh-statuses').classList.toggle('aside', field > 0);
    part('weigh-meaning').textContent = form?.marks.length === 0 ? form.meaning(value) : '';
  };
  return {
    forget: () => {
      fields.replaceChildren();
      shown = '';
    },
    show: (forms, draft) => {
      if (fields.childElementCount === 0) build(forms);
      forms.forEach(({ id }, index) => {
        const field = fields.children[index]!;
        field.querySelector('.value')!.textContent = draft.values[id] || '–';
        field.setAttribute('aria-pressed', String(index === draft.field));
      });
      showMarks(forms[draft.field], draft);
      const following = forms[draft.field + 1];
      const isTyped = (draft.values[forms[draft.field]?.id ?? ''] ?? '') !== '';
      const isNothing = forms.every(({ id }) => (draft.values[id] ?? '') === '');
      if (following !== undefined && isTyped)
        next.textContent = say('Next: {name}', { name: following.name });
      else next.textContent = isNothing ? say('Pass') : say('Next');
    },
  };
}

/** `3 half the leaves`; yes and no need no figure. */
function markWords({ value, text }: ValueForm['marks'][number]): string {
  if (text === '') return value;
  return text === say('yes') || text === say('no') ? text : `${value} ${text}`;
}
