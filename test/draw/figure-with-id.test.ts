import { expect, it } from 'vitest';
import { figureWithId } from '../../src/draw/figure-with-id.ts';
import { drawPositionMaps } from '../../src/draw/position-maps.ts';
import { drawWeightsByTreatment } from '../../src/draw/weights-by-treatment.ts';
import { computeFindings } from '../../src/compute/findings.ts';
import { npk } from '../compute/published.ts';

const trial = npk();
const findings = computeFindings(trial);
const figures = [...drawPositionMaps(trial, findings).slice(0, 1), drawWeightsByTreatment(trial, findings)];

const idsOf = (svg: string) => [...svg.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id!);

it.each(figures)('$id stands under another id with all that refers to it', (figure) => {
  const again = figureWithId(figure, 'again-2');
  expect(again.id).toBe('again-2');
  const ids = idsOf(again.svg);
  expect(ids.length).toBe(idsOf(figure.svg).length);
  expect(ids.length).toBeGreaterThan(0);
  for (const id of ids) expect(id).toMatch(/^again-2(-|$)/);
  const referred = [
    ...again.svg.matchAll(/aria-(?:labelledby|describedby)="([^"]+)"|url\(#([^)]+)\)|href="#([^"]+)"/g),
  ];
  expect(referred.length).toBeGreaterThan(0);
  for (const [, list, url, href] of referred) {
    for (const id of (list ?? url ?? href ?? '').split(' ')) expect(ids).toContain(id);
  }
});

it('the same id leaves a figure as it is', () => {
  expect(figureWithId(figures[0]!, figures[0]!.id)).toBe(figures[0]);
});
