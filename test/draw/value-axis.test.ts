import { expect, test } from 'vitest';
import { fluidScale } from '../../src/draw/fluid.ts';
import { valueAxes } from '../../src/draw/value-axis.ts';
import { everyElement, parseXml } from '../support/xml.ts';

const labels = (unit: string) =>
  everyElement(parseXml(`<svg>${valueAxes(fluidScale([20, 55], [13, 90]), 0, unit)}</svg>`))
    .filter(({ name }) => name === 'text')
    .map(({ text }) => text.replaceAll('\u00A0', ' '));

test('a unit as long as a word takes the room of the label before it', () => {
  expect(labels('[bu_us]/[acr_us]')).toEqual(['20', '25', '30', '35', '40', '45', '55 bu/acre']);
});

test('a short unit leaves every label', () => {
  expect(labels('m')[7]).toBe('55 m');
  expect(labels('m').slice(0, 8)).toEqual(['20', '25', '30', '35', '40', '45', '50', '55 m']);
});
