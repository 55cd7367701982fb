import type { Choice } from '../../compare/choice/choice.ts';
import { ownTrialWords } from '../../compare/own-trial-cells.ts';
import { choiceSentences } from '../../compare/words/choice-sentences.ts';
import { say } from '../../model/say.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { foldedHtml } from '../figure-html.ts';
import { escapeHtml, type FirstUnits } from '../html.ts';
import type { PageComparison } from './comparison-data.ts';
import { type ComparisonPart, comparisonParts, isLarge, type ShownComparison } from './comparison-html.ts';
import { figureTools } from './figure-tools.ts';

/** What is folded away and not made yet, by its number. */
let later: (() => string)[] = [];

/** Shows a comparison where its crop's stood as published, and hides those of the other crops. */
export function showComparison(choice: Choice, entry: Seasons | null, comparison: PageComparison): void {
  const section = showSection(choice.crop);
  later = [];
  section.querySelector('h2')!.textContent = comparison.heading;
  section.classList.toggle('large', entry !== null && isLarge(entry));
  const focused = document.activeElement;
  const place = focused instanceof HTMLElement && section.contains(focused) ? placeOf(focused) : null;
  const chosen = [...ownSentences(entry, comparison), ...choiceSentences(choice, entry, comparison.offered)];
  const shown: ShownComparison | null = entry && {
    entry,
    name: comparison.name,
    title: comparison.title,
    id: choice.crop,
    first: document.documentElement.dataset['first'] as FirstUnits,
    chosen,
    order: choice.order,
    against: choice.against,
    everything: choice.everything,
    own: { trials: comparison.own, words: ownTrialWords() },
    folded: isLarge(entry) ? foldedLater : foldedHtml,
    tools: figureTools,
  };
  for (const [part, html] of Object.entries(comparisonParts)) {
    const written = shown ? html(shown) : part === 'answer' ? nothingLeft(chosen) : '';
    section.querySelector<HTMLElement>(`[data-part="${part as ComparisonPart}"]`)!.innerHTML = written;
  }
  if (place !== null) (section.querySelector<HTMLElement>(place) ?? headingOf(section)).focus();
}

/** Of the crops that stand on the page as published, the one that is chosen. */
export function showSection(crop: string): HTMLElement {
  const sections = [...document.querySelectorAll<HTMLElement>('section[data-crop]')];
  for (const section of sections) section.hidden = section.dataset['crop'] !== crop;
  return sections.find(({ hidden }) => !hidden)!;
}

/** Content that is made when it is unfolded. */
function foldedLater(summary: string, content: () => string): string {
  later.push(content);
  return `<details data-later="${String(later.length - 1)}"><summary>${escapeHtml(summary)}</summary></details>`;
}

document.addEventListener(
  'toggle',
  ({ target }) => {
    if (!(target instanceof HTMLDetailsElement) || !target.open) return;
    const number = target.dataset['later'];
    if (number === undefined) return;
    delete target.dataset['later'];
    target.insertAdjacentHTML('beforeend', later[Number(number)]?.() ?? '');
  },
  // It does not bubble.
  true,
);

function ownSentences(entry: Seasons | null, { own, title }: PageComparison): string[] {
  return [...own].map((id) =>
    entry?.trials.some((trial) => trial.id === id)
      ? say(
          '“{title}” is your own trial, not published: the answer rests on it too. It stays in this browser.',
          {
            title: title(id),
          },
        )
      : say('“{title}”, your own trial, not published, is left out by what is chosen.', { title: title(id) }),
  );
}

function nothingLeft(chosen: readonly string[]): string {
  const sentences = chosen.map((sentence) => `<p>${escapeHtml(sentence)}</p>`).join('');
  return `<p class="finding">${escapeHtml(say('No trial is left by what is chosen.'))}</p>${sentences}`;
}

/** How the same element is found again once all is drawn anew. */
function placeOf({ dataset, tagName, parentElement }: HTMLElement): string | null {
  const { figure, keep } = dataset;
  if (figure !== undefined) return `[data-figure="${CSS.escape(figure)}"][data-keep="${keep!}"]`;
  const part = parentElement?.closest<HTMLElement>('[data-part]')?.dataset['part'];
  return part === undefined ? null : `[data-part="${part}"] ${tagName.toLowerCase()}`;
}

function headingOf(section: HTMLElement): HTMLElement {
  const heading = section.querySelector('h2')!;
  heading.tabIndex = -1;
  return heading;
}
