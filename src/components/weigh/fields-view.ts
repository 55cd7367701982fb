/** What is being typed: a button for each variable, the one that the keys type marked, and the words of the large key. */
import { say } from '../../model/say.ts';
import type { ValueForm } from '../../weigh/value-form.ts';
import { make, part } from './dom.ts';
import type { Draft } from './store.ts';

export interface FieldsView {
  show(forms: readonly ValueForm[], draft: Draft): void;
  /** Draws all anew when next shown, for another trial. */
  forget(): void;
}

/** @param onChoose is given the index of the variable that was tapped */
export function fieldsView(onChoose: (index: number) => void): FieldsView {
  const [fields, next] = [part('weigh-fields'), part('weigh-next')];
  const build = (forms: readonly ValueForm[]): void => {
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
  return {
    forget: () => fields.replaceChildren(),
    show: (forms, draft) => {
      if (fields.childElementCount === 0) build(forms);
      forms.forEach(({ id }, index) => {
        const field = fields.children[index]!;
        field.querySelector('.value')!.textContent = draft.values[id] || '–';
        field.setAttribute('aria-pressed', String(index === draft.field));
      });
      const following = forms[draft.field + 1];
      const isTyped = (draft.values[forms[draft.field]?.id ?? ''] ?? '') !== '';
      const isNothing = forms.every(({ id }) => (draft.values[id] ?? '') === '');
      if (following !== undefined && isTyped)
        next.textContent = say('Next: {name}', { name: following.name });
      else next.textContent = isNothing ? say('Pass') : say('Next');
    },
  };
}
