/** Lets a figure be kept as a file of its own, with its looks written into it. */
import { keepFile } from '../keep-file.ts';

/** What of a drawing's looks the style sheet gives, and a file of its own must carry itself. */
const looks = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'font-family',
  'font-size',
  'font-weight',
  'font-style',
  'font-variant-numeric',
  'text-anchor',
  'opacity',
  'paint-order',
] as const;
/** Pixels of a picture for each of the page's, so that it can be printed. */
const sharpness = 2;
const margin = 12;

/** Answers the buttons that keep a figure. */
export function figureFiles(): void {
  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof HTMLButtonElement)) return;
    const { keep, figure } = target.dataset;
    if (keep === undefined || figure === undefined) return;
    const parts = document.getElementById(figure)?.querySelectorAll<SVGSVGElement>('.drawing > svg') ?? [];
    const [drawn, ...others] = parts;
    if (!drawn) return;
    const file = drawingOf(drawn, others);
    if (keep === 'svg') keepFile(`${figure}.svg`, new Blob([file.text], { type: 'image/svg+xml' }));
    else
      void picture(file).then((blob) => {
        if (blob) keepFile(`${figure}.png`, blob);
      });
  });
}

/**
 * A drawing as a file by itself: as wide as it is shown, its looks as attributes, on paper of its own.
 *
 * @param others its further parts, where it is drawn in several
 */
export function drawingOf(
  drawn: SVGSVGElement,
  others: readonly SVGSVGElement[] = [],
): { text: string; width: number; height: number } {
  const { width, top } = drawn.getBoundingClientRect();
  const height = (others.at(-1) ?? drawn).getBoundingClientRect().bottom - top;
  const copy = drawn.cloneNode(true) as SVGSVGElement;
  withLooks(drawn, copy);
  const box = drawn.viewBox.baseVal;
  const [wide, high] = box.width > 0 ? [box.width, box.height] : [width, height];
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('width', String(Math.round(width + 2 * margin)));
  copy.setAttribute('height', String(Math.round(height + 2 * margin)));
  copy.setAttribute(
    'viewBox',
    [-margin, -margin, wide + 2 * margin, high + 2 * margin].map(String).join(' '),
  );
  if (box.width === 0) fixWidths(copy, copy, width, 0);
  for (const part of others) {
    const below = part.cloneNode(true) as SVGSVGElement;
    withLooks(part, below);
    fixWidths(copy, below, width, part.getBoundingClientRect().top - top);
  }
  const paper = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
  for (const [key, value] of [
    ['x', -margin],
    ['y', -margin],
    ['width', wide + 2 * margin],
    ['height', high + 2 * margin],
  ] as const)
    paper.setAttribute(key, String(value));
  paper.setAttribute('fill', getComputedStyle(document.body).backgroundColor);
  copy.querySelector('desc')?.after(paper);
  return {
    text: new XMLSerializer().serializeToString(copy),
    width: width + 2 * margin,
    height: height + 2 * margin,
  };
}

/** Shares of the width, which would grow with the margin, as what they are where the figure is shown. */
function fixWidths(copy: SVGSVGElement, part: SVGSVGElement, width: number, y: number): void {
  const frame = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  frame.setAttribute('y', String(y));
  frame.setAttribute('width', String(width));
  frame.setAttribute('overflow', 'visible');
  const drawn = [...part.children].filter(({ tagName }) => tagName !== 'title' && tagName !== 'desc');
  frame.append(...drawn);
  copy.append(frame);
}

/** What is not shown, such as the unit that was not chosen, is left out; of the rest the looks are written down. */
function withLooks(shown: Element, copy: Element): void {
  const style = getComputedStyle(shown);
  for (const look of looks) {
    const value = style.getPropertyValue(look);
    if (value !== '') copy.setAttribute(look, value);
  }
  copy.removeAttribute('class');
  const pairs = [...shown.children].map((child, index) => [child, copy.children[index]!] as const);
  for (const [child, copied] of pairs) {
    const described = child.tagName === 'title' || child.tagName === 'desc';
    if (!described && getComputedStyle(child).display === 'none') copied.remove();
    else if (!described) withLooks(child, copied);
  }
}

/** The drawing as a picture; null where the browser makes none. */
async function picture({ text, width, height }: ReturnType<typeof drawingOf>): Promise<Blob | null> {
  const image = new Image();
  const source = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  image.src = source;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * sharpness);
  canvas.height = Math.round(height * sharpness);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(source);
  return new Promise((done) => {
    canvas.toBlob(done, 'image/png');
  });
}
