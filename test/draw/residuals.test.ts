import { describe, expect, it } from 'vitest';
import { computeFindings } from '../../src/compute/findings.ts';
import { drawNormalPlot } from '../../src/draw/normal-plot.ts';
import { drawReplicatesCurve } from '../../src/draw/replicates-curve.ts';
import { drawResidualMaps } from '../../src/draw/residual-map.ts';
import { drawResidualPlot } from '../../src/draw/residual-plot.ts';
import { blockFindings, blockTrial, findingsOf, madeUpInference } from '../support/example-trial.ts';
import { trialOf as plantsOf } from '../support/trial-of.ts';
import { valueReader } from '../support/read-axis.ts';
import { without } from '../../src/model/without.ts';
import { parseXml, withClass, type XmlElement } from '../support/xml.ts';

const trial = blockTrial();
const findings = blockFindings(trial);
const inference = madeUpInference();

/** Reads upright values off the labelled levels at the left, those of the US unit where asked for. */
function levelReader(root: XmlElement, kind = 'metric'): (y: string | undefined) => number {
  const ofKind = withClass(root, kind).flatMap(({ children }) => children);
  const ticks = [...root.children, ...ofKind]
    .filter(({ name, attributes }) => name === 'text' && attributes['text-anchor'] === 'end')
    .map(({ text, attributes }) => ({
      value: Number(text.replace('\u2212', '-')),
      y: Number(attributes['y']) - 4,
    }));
  const [low, high] = [ticks[0]!, ticks.at(-1)!];
  return (y) => low.value + ((Number(y) - low.y) * (high.value - low.value)) / (high.y - low.y);
}

describe('residual maps', () => {
  it('write each residual with its sign, shaded away from zero on either side', () => {
    const [figure] = drawResidualMaps(trial, findings);
    const cells = withClass(parseXml(figure!.svg), 'cell');
    const seen = cells.map((cell) => [
      cell.attributes['class']!.split(' ')[1],
      withClass(cell, 'metric')[0]?.text ?? null,
    ]);
    // -14.2, 3.1, (none), 0.4, (none), 9.8, (none), -6.5, 1.2 in steps of 5 about zero
    expect(seen).toEqual([
      ['below-3', '\u221214'],
      ['above-1', '+3'],
      ['blank', null],
      ['even', '0'],
      ['blank', null],
      ['above-2', '+10'],
      ['blank', null],
      ['below-1', '\u22127'],
      ['even', '+1'],
    ]);
    expect(withClass(parseXml(figure!.svg), 'scale-key')[0]!.text).toContain(
      '\u221212.5\u22127.5\u22122.5+2.5+7.5+12.5',
    );
  });

  it('leaves a mark in the corner its room above the number', () => {
    // A dead plant counts as 0 in its pot, so that there is a residual beside its mark.
    const lost = plantsOf(
      [100, 110, 120, 130, null, 140].map((weight, index) => ({
        container: 'T1',
        row: 1 + (index % 3),
        column: 1 + Math.floor(index / 3),
        treatment: { cultivar: index % 2 === 0 ? 'a' : 'b' },
        weight,
        ...(weight === null ? { status: 'dead' as const } : {}),
      })),
    );
    const figures = drawResidualMaps(lost, computeFindings(lost));
    const beside = figures
      .flatMap(({ svg }) => withClass(parseXml(svg), 'cell'))
      .filter((cell) => withClass(cell, 'number').length > 0 && withClass(cell, 'mark').length > 0);
    expect(beside.length).toBeGreaterThan(0);
    for (const cell of beside) {
      const [, y, half] = /translate\(\S+ (\S+)\) scale\((\S+)\)/.exec(
        withClass(cell, 'mark')[0]!.attributes['transform']!,
      )!;
      const bottom = Number(y) + 0.95 * Number(half);
      // Digits are about 0.7 of the type size of 15 px high.
      const top = Number(withClass(cell, 'number')[0]!.attributes['y']) - 0.7 * 15;
      expect(top - bottom).toBeGreaterThan(1);
    }
  });

  it('are left out where no residuals were computed', () => {
    expect(drawResidualMaps(trial, { ...findings, position: [] })).toEqual([]);
  });
});

describe('residual plot and normal plot', () => {
  it('put each unit at its fitted value and residual', () => {
    const root = parseXml(drawResidualPlot(trial, findings, inference)!.svg);
    const [x, y] = [valueReader(root), levelReader(root)];
    const dots = withClass(root, 'dot').map(({ attributes }) => [x(attributes['cx']), y(attributes['cy'])]);
    for (const [index, { fitted, residual }] of inference.residuals!.entries()) {
      expect(Math.abs(dots[index]![0]! - fitted)).toBeLessThan(0.05);
      expect(Math.abs(dots[index]![1]! - residual)).toBeLessThan(0.05);
    }
  });

  it('have upright axes in either unit, of which one is shown', () => {
    const root = parseXml(drawResidualPlot(trial, findings, inference)!.svg);
    const y = levelReader(root, 'when-chosen');
    for (const [index, { residual }] of inference.residuals!.entries()) {
      const dot = withClass(root, 'dot')[index]!;
      expect(Math.abs(y(dot.attributes['cy']) - residual / 28.349523125)).toBeLessThan(0.002);
    }
    const heads = withClass(root, 'strong').map(({ text, attributes }) => [attributes['class'], text]);
    expect(heads.slice(0, 2)).toEqual([
      ['strong metric', 'Residual (g)'],
      ['strong when-chosen', 'Residual (oz)'],
    ]);
  });

  it('put each unit at its normal score, with a line through the quartiles', () => {
    const root = parseXml(drawNormalPlot(trial, findings, inference)!.svg);
    const [x, y] = [valueReader(root), levelReader(root)];
    const dots = withClass(root, 'dot').map(({ attributes }) => [x(attributes['cx']), y(attributes['cy'])]);
    for (const [index, { normal_score: score, residual }] of inference.residuals!.entries()) {
      expect(Math.abs(dots[index]![0]! - score)).toBeLessThan(0.005);
      expect(Math.abs(dots[index]![1]! - residual)).toBeLessThan(0.05);
    }
    // Type 7 quartiles by hand: residuals -9 -7 -4 -1 0 3 6 12 give -4.75 and 3.75; scores -1.43 -0.85 -0.47
    // -0.15 0.15 0.47 0.85 1.43 give -0.565 and 0.565; the slope is 8.5 / 1.13 = 7.522.
    const line = withClass(root, 'leader')[0]!.attributes;
    const slope = (y(line['y2']) - y(line['y1'])) / (x(line['x2']) - x(line['x1']));
    expect(slope).toBeCloseTo(8.5 / 1.13, 1);
  });

  it('keep the line within the plane', () => {
    const residuals = inference.residuals!.map((each) => ({
      ...each,
      residual: each.residual + (each.residual > 3 ? 60 : 0),
    }));
    for (const these of [residuals, inference.residuals!]) {
      const root = parseXml(drawNormalPlot(trial, findings, { ...inference, residuals: these })!.svg);
      const y = levelReader(root);
      const [low, high] = [
        Math.min(0, ...these.map((each) => each.residual)),
        Math.max(...these.map((each) => each.residual)),
      ];
      const { y1, y2 } = withClass(root, 'leader')[0]!.attributes;
      for (const end of [y1, y2]) {
        expect(y(end)).toBeGreaterThanOrEqual(low - 20);
        expect(y(end)).toBeLessThanOrEqual(high + 20);
        expect(Number(end)).toBeGreaterThanOrEqual(30);
        expect(Number(end)).toBeLessThanOrEqual(221);
      }
    }
  });

  it('share a table twin and are null without residuals', () => {
    const figure = drawNormalPlot(trial, findings, inference)!;
    // 120 g are 4.233 oz, and 9 g are 0.317 oz.
    expect(figure.table.columns.map(({ heading }) => heading)).toEqual([
      'Unit',
      'Container',
      'Fitted (g)',
      'Fitted (oz)',
      'Residual (g)',
      'Residual (oz)',
      'Expected normal score',
    ]);
    expect(figure.table.rows[0]).toEqual([
      'P1',
      'T1',
      '120.0',
      '4.23',
      '\u22129.0',
      '\u22120.32',
      '\u22121.43',
    ]);
    const bare = without(inference, 'residuals');
    expect(drawNormalPlot(trial, findings, bare)).toBeNull();
    expect(drawResidualPlot(trial, findings, bare)).toBeNull();
  });
});

describe('replicates for the next trial', () => {
  it('puts each number of replicates where the axes say', () => {
    const root = parseXml(drawReplicatesCurve(findings)!.svg);
    const [x, y] = [valueReader(root), levelReader(root)];
    for (const power of ['80', '90']) {
      const curve = withClass(root, 'line').find(({ attributes }) => attributes['data-power'] === power)!;
      const seen = withClass(curve, 'estimate').map(({ attributes }) => [
        x(attributes['cx']),
        y(attributes['cy']),
      ]);
      const expected = findings.next_trial.filter((each) => String(Math.round(each.power * 100)) === power);
      for (const [
        index,
        { difference_percent: difference, replicates_needed: replicates },
      ] of expected.entries()) {
        expect(Math.abs(seen[index]![0]! - difference)).toBeLessThan(0.05);
        expect(Math.abs(seen[index]![1]! - replicates!)).toBeLessThan(0.05);
      }
    }
  });

  it('keeps what could not be reckoned in the table with its reason, and is null where nothing could', () => {
    const [one, ...rest] = findings.next_trial;
    const lacking = {
      ...findings,
      next_trial: [{ ...one!, replicates_needed: null, reason: 'No error is known.' }, ...rest],
    };
    expect(drawReplicatesCurve(lacking)!.table.rows[0]![2]).toBe('No error is known.');
    expect(drawReplicatesCurve(findingsOf(trial, { next_trial: [] }))).toBeNull();
  });
});
