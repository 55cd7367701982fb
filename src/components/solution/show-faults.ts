import type { InputFault } from './read-inputs.ts';

type Field = HTMLInputElement | HTMLSelectElement;

/**
 * Writes beside each field what is not understood in it, and takes away what was written before.
 *
 * @param form all fields
 * @param fieldOf the field that a fault belongs to
 */
export function showFaults(
  form: HTMLFormElement,
  faults: readonly InputFault[],
  fieldOf: (fault: InputFault) => Field | null,
): void {
  const stale = new Set(form.querySelectorAll<Field>('[aria-invalid]'));
  for (const fault of faults) {
    const field = fieldOf(fault);
    if (!field) continue;
    stale.delete(field);
    write(field, fault.message);
  }
  for (const field of stale) clear(field);
  for (const field of form.querySelectorAll<Field>('input, select')) describe(field);
}

function write(field: Field, message: string): void {
  const box = field.closest('.field')!;
  let line = box.querySelector('.fault');
  if (!line) {
    line = document.createElement('p');
    line.className = 'fault';
    field.after(line);
  }
  line.id = `fault-${field.id}`;
  if (line.textContent !== message) line.textContent = message;
  field.setAttribute('aria-invalid', 'true');
}

function clear(field: Field): void {
  field.removeAttribute('aria-invalid');
  field.closest('.field')!.querySelector('.fault')?.remove();
}

/** Joins a field to its fault and its hint, in this order. */
function describe(field: Field): void {
  const fault = field.closest('.field')?.querySelector('.fault')?.id;
  const hint = field.dataset['hint'];
  const ids = [fault, hint].filter((id) => id !== undefined && id !== '');
  if (ids.length > 0) field.setAttribute('aria-describedby', ids.join(' '));
  else field.removeAttribute('aria-describedby');
}
