/** Lets buttons with `data-copy` copy that text, where the browser allows a page to. */
const clipboard = (navigator as { clipboard?: Clipboard }).clipboard;

for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-copy]')) {
  if (clipboard === undefined) continue;
  const status = button.nextElementSibling;
  button.hidden = false;
  button.addEventListener('click', () => {
    clipboard.writeText(button.dataset['copy'] ?? '').then(
      () => {
        if (status) status.textContent = button.dataset['copied'] ?? '';
      },
      () => {
        if (status) status.textContent = button.dataset['refused'] ?? '';
      },
    );
  });
}
