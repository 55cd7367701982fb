/** Shows the units that the reader chooses, and remembers the choice on this site. */
const root = document.documentElement;
const group = document.querySelector<HTMLElement>('.units-switch');
const buttons = [...(group?.querySelectorAll<HTMLButtonElement>('button[data-choose]') ?? [])];

function show(units: string): void {
  root.dataset['units'] = units;
  for (const button of buttons)
    button.setAttribute('aria-pressed', String(button.dataset['choose'] === units));
}

function remember(units: string): void {
  try {
    localStorage.setItem('tankside-units', units);
  } catch {
    // Storage may be forbidden; the choice then holds for this page.
  }
}

for (const button of buttons) {
  button.addEventListener('click', () => {
    const units = button.dataset['choose'] ?? 'metric';
    show(units);
    remember(units);
  });
}
show(root.dataset['units'] ?? 'metric');
if (group) group.hidden = false;
