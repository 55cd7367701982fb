/** A place that takes files: dropped anywhere on the page, or chosen with its buttons. */
import { chosenFiles, droppedFiles, type PageFile } from './page-files.ts';

/**
 * Wires a `DropZone` and shows it.
 *
 * @param onFiles told at once that files are coming, and how to gather them
 */
export function takeFiles(zone: HTMLElement, onFiles: (gather: Promise<readonly PageFile[]>) => void): void {
  for (const input of zone.querySelectorAll('input')) {
    const button = zone.querySelector(`[data-choose="${input.name}"]`);
    button?.addEventListener('click', () => input.click());
    input.addEventListener('change', () => {
      const files = chosenFiles(input.files);
      // The same folder, mended, can then be chosen again.
      input.value = '';
      if (files.length > 0) onFiles(Promise.resolve(files));
    });
  }
  takeDrops(zone, onFiles);
  zone.hidden = false;
}

/** Anywhere on the page will do: a folder dropped beside the frame must not make the browser leave the page. */
function takeDrops(zone: HTMLElement, onFiles: (gather: Promise<readonly PageFile[]>) => void): void {
  let inside = 0;
  const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  document.addEventListener('dragover', (event) => {
    if (holdsFiles(event)) event.preventDefault();
  });
  document.addEventListener('dragenter', (event) => {
    if (holdsFiles(event)) zone.classList.toggle('over', (inside += 1) > 0);
  });
  document.addEventListener('dragleave', (event) => {
    if (holdsFiles(event)) zone.classList.toggle('over', (inside -= 1) > 0);
  });
  document.addEventListener('drop', (event) => {
    const { dataTransfer } = event;
    if (dataTransfer === null || !holdsFiles(event)) return;
    event.preventDefault();
    inside = 0;
    zone.classList.remove('over');
    onFiles(droppedFiles(dataTransfer));
  });
}
