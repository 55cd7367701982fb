/** Asks about a value, and takes the answer. */
import { say } from '../../model/say.ts';
import type { Ask } from '../../weigh/asks.ts';
import { part } from './dom.ts';
import { askWords } from './words.ts';

export interface AskPanel {
  show(asks: readonly Ask[], text: string, unit: string): void;
  hide(): void;
}

/** What asks takes the room of what can wait. */
const waiting = ['weigh-statuses', 'weigh-remarks'];

/** @param onAnswer is told whether the value is kept */
export function askPanel(onAnswer: (isKept: boolean) => void): AskPanel {
  const panel = part('weigh-ask');
  const turn = (isAsking: boolean): void => {
    panel.hidden = !isAsking;
    for (const id of waiting) part(id).hidden = isAsking;
  };
  const answer = (isKept: boolean): void => {
    turn(false);
    part('weigh-next').focus({ preventScroll: true });
    onAnswer(isKept);
  };
  part('weigh-keep').addEventListener('click', () => answer(true));
  part('weigh-change').addEventListener('click', () => answer(false));
  return {
    show: (asks, text, unit) => {
      const shown = `${text} ${unit}`.trim();
      part('weigh-question').textContent = asks.map((each) => askWords(each, shown, unit)).join(' ');
      part('weigh-keep').textContent = say('Keep {shown}', { shown });
      turn(true);
      part('weigh-change').focus({ preventScroll: true });
    },
    hide: () => {
      // What is hidden must not hold the keyboard.
      if (panel.contains(document.activeElement)) part('weigh-next').focus({ preventScroll: true });
      turn(false);
    },
  };
}
