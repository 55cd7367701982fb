import { everyElement, withClass, type XmlElement } from './xml.ts';

const share = (text: string | undefined) => Number((text ?? '').replace('%', ''));
const number = (text: string) =>
  Number(
    text
      .replaceAll('\u2212', '-')
      .replace(/[\u202F]/g, '')
      .replace(/\u00A0.*/, ''),
  );

/**
 * Reads a drawing as a reader would: a straight line through the first and last labelled tick of its metric
 * (or US) axis turns a place into a value. Nothing of the drawing's own scale is used.
 */
export function valueReader(
  root: XmlElement,
  kind: 'metric' | 'us' = 'metric',
): (place: string | undefined) => number {
  const axes = withClass(root, 'axis');
  const axis = axes.find(({ attributes }) => attributes['class'] === `axis ${kind}`) ?? axes[0]!;
  const ticks = everyElement(axis)
    .filter(({ name }) => name === 'text')
    .map(({ text, attributes }) => ({ value: number(text), at: share(attributes['x']) }));
  const [first, last] = [ticks[0]!, ticks.at(-1)!];
  return (place) =>
    first.value + ((share(place) - first.at) * (last.value - first.value)) / (last.at - first.at);
}
