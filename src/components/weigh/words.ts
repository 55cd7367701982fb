/** The words of a weigh-in that depend on what was entered. */
import { formatNumber } from '../../compute/format/format-number.ts';
import { say } from '../../model/say.ts';
import type { Status } from '../../model/trial.ts';
import type { Ask } from '../../weigh/asks.ts';
import type { ContainerTotal } from '../../weigh/container-total.ts';
import type { ValueForm } from '../../weigh/value-form.ts';
import type { Place } from '../../weigh/place.ts';

/** `T1 · row 2 · column 3`, and the plant where a pot has several. */
export function placeWords({ container, row, column, plant }: Place, plants: number): string {
  const at = { container, row, column };
  return plants > 1 && plant !== null
    ? say('{container} · row {row} · column {column} · plant {plant}', { ...at, plant })
    : say('{container} · row {row} · column {column}', at);
}

/** A number as short as it is, up to 3 decimals. */
export function shortNumber(value: number): string {
  const decimals = String(Number(value.toFixed(3))).split('.')[1]?.length ?? 0;
  return formatNumber(value, decimals);
}

/** A quantity with its unit. */
export function amount(value: number, unit: string): string {
  return `${shortNumber(value)} ${unit}`.trim();
}

/** What is asked about a value. */
export function askWords(ask: Ask, shown: string, unit: string): string {
  if (ask.about === 'zero')
    return say('{shown}: is the plant dead, or was there truly nothing on the scale?', { shown });
  if (ask.about === 'unit')
    return say(
      ask.relation === 'more'
        ? '{shown} is about {factor} times more than its fellows ({usual}): {question}'
        : '{shown} is about {factor} times less than its fellows ({usual}): {question}',
      { shown, factor: shortNumber(ask.factor), usual: amount(ask.usual, unit), question: say(ask.question) },
    );
  if (ask.about === 'fellows')
    return say('{shown} is far from its {n} fellows, which lie around {usual} ({lower} to {upper}).', {
      shown,
      n: ask.n,
      usual: amount(ask.usual, unit),
      lower: shortNumber(Math.max(0, ask.lower)),
      upper: amount(ask.upper, unit),
    });
  if (ask.about === 'range')
    return say(
      ask.side === 'below'
        ? '{shown} is below the lowest that would not surprise, {limit}.'
        : '{shown} is above the highest that would not surprise, {limit}.',
      { shown, limit: shortNumber(ask.limit) },
    );
  return say('{shown} lies between the steps of the scale, which are {step}.', {
    shown,
    step: amount(ask.step, unit),
  });
}

/** Why a mark is not taken. */
export function offItsScaleWords(shown: string, { name, marks }: Pick<ValueForm, 'name' | 'marks'>): string {
  return marks.length === 0
    ? say('{name}: {shown} is no BBCH code, which go from 0 to 99.', { name, shown })
    : say('{name}: {shown} is none of its marks, which are {marks}.', {
        name,
        shown,
        marks: marks.map(({ value }) => value).join(', '),
      });
}

/** A status in the reader's language; harvest.csv has the English word. */
export function statusWords(status: Status): string {
  const words: Readonly<Record<Status, string>> = {
    weighed: say('weighed'),
    'not weighed': say('not weighed'),
    dead: say('dead'),
    'no regrowth': say('no regrowth'),
    culled: say('culled'),
    'not planted': say('not planted'),
  };
  return words[status];
}

/** How a container's total stands to its plants. */
export function totalWords(total: ContainerTotal, unit: string): string {
  const { n, sum, entered, places, notWeighed, difference, byRounding, verdict } = total;
  const sums = say('{count} weighed, {sum} in all.', { count: n, sum: amount(sum, unit) });
  if (verdict === 'no total') return sums;
  if (verdict === 'not complete')
    return notWeighed > 0
      ? `${sums} ${say('Some were not weighed, so the total cannot be compared.')}`
      : `${sums} ${say('The total can be compared once all {places} are entered; {entered} are.', { places, entered })}`;
  const apart = { apart: amount(Math.abs(difference ?? 0), unit), rounding: amount(byRounding, unit) };
  return verdict === 'agrees'
    ? `${sums} ${say('Agrees: {apart} apart, and rounding explains {rounding}.', apart)}`
    : `${sums} ${say('Differs: {apart} apart, and rounding explains {rounding}. Weigh the crate again, or look for a plant entered wrongly.', apart)}`;
}
