/** Lets one key lead to the search box; the reader can turn it off, and this site remembers it. */
const box = document.querySelector<HTMLInputElement>('#search-words');
const choice = document.querySelector<HTMLInputElement>('#search-key');
const key = 'tankside-search-key';

if (box && choice) run(box, choice);

function run(input: HTMLInputElement, wanted: HTMLInputElement): void {
  wanted.checked = keyIsOn();
  wanted.addEventListener('change', () => keepKey(wanted.checked));
  document.addEventListener('keydown', (event) => {
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || !wanted.checked) return;
    if (isTyping(event.target)) return;
    event.preventDefault();
    input.focus();
    input.select();
  });
}

/** Whether the key would have written a letter where the reader is. */
function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (
    target.isContentEditable ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement
  )
    return true;
  return (
    target instanceof HTMLInputElement && !['checkbox', 'radio', 'button', 'submit'].includes(target.type)
  );
}

function keyIsOn(): boolean {
  try {
    return localStorage.getItem(key) !== 'off';
  } catch {
    // Storage may be forbidden; the key then works on each page.
    return true;
  }
}

function keepKey(on: boolean): void {
  try {
    if (on) localStorage.removeItem(key);
    else localStorage.setItem(key, 'off');
  } catch {
    // The choice then holds for this page.
  }
}
