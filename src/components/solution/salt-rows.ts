import { say } from '../../model/say.ts';
import { type SaltFields, saltFields } from './calculator-state.ts';

/** The rows of fields, one for each salt. */
export interface SaltRows {
  /** As many rows as salts, with what is written in each. */
  show(salts: readonly SaltFields[]): void;
  read(): SaltFields[];
  /** Says beside each amount what it is in. */
  sayUnit(per: string): void;
  /** A field of a row, from 0. */
  field(salt: number, name: string): HTMLInputElement | null;
  /** Adds a blank row and goes to its first field. */
  add(): void;
}

/**
 * Keeps the rows in a box, made from the page's template.
 *
 * @param removed called when a row was removed by its button
 */
export function saltRows(box: HTMLElement, template: HTMLTemplateElement, removed: () => void): SaltRows {
  const rows = (): HTMLElement[] => [...box.querySelectorAll<HTMLElement>('.salt')];
  let amount = amountIn('g/L');
  const fieldOf = (row: HTMLElement | undefined, name: string): HTMLInputElement | null =>
    row?.querySelector<HTMLInputElement>(`input[name="${name}"]`) ?? null;

  function append(): void {
    box.append(template.content.cloneNode(true));
    const row = rows().at(-1)!;
    row.querySelector('.remove')!.addEventListener('click', () => {
      const at = rows().indexOf(row);
      row.remove();
      if (rows().length === 0) append();
      number();
      fieldOf(rows()[Math.min(at, rows().length - 1)], 'name')?.focus();
      removed();
    });
  }

  /** Numbers the rows, and joins each label and hint to its field. */
  function number(): void {
    for (const [index, row] of rows().entries()) {
      const place = String(index + 1);
      row.querySelector('.field-amount label')!.textContent = amount;
      row.setAttribute('aria-label', say('Salt {number}', { number: place }));
      row
        .querySelector('.remove')!
        .setAttribute('aria-label', say('Remove salt {number}', { number: place }));
      for (const input of row.querySelectorAll('input')) {
        input.id = `${input.name}-${place}`;
        input.closest('.field')!.querySelector('label')!.htmlFor = input.id;
      }
    }
  }

  return {
    show(salts) {
      while (rows().length > salts.length) rows().at(-1)!.remove();
      while (rows().length < salts.length) append();
      number();
      for (const [index, row] of rows().entries())
        for (const name of saltFields) fieldOf(row, name)!.value = salts[index]![name];
    },
    sayUnit(per) {
      amount = amountIn(per);
      number();
    },
    read: () =>
      rows().map((row) => {
        const [name, amount, label, formula, stock] = saltFields.map((each) => fieldOf(row, each)!.value);
        return { name: name!, amount: amount!, label: label!, formula: formula!, stock: stock! };
      }),
    field: (salt, name) => fieldOf(rows()[salt], name),
    add() {
      append();
      number();
      fieldOf(rows().at(-1), 'name')?.focus();
    },
  };
}

function amountIn(per: string): string {
  return per === 'g/L' ? say('Amount, g/L') : say('Amount, oz/100 gal');
}
