import { afterEach, describe, expect, it } from 'vitest';
import { plainText } from '../../src/compute/words/words.ts';
import { seasons } from '../../src/compare/seasons.ts';
import { drawAgainstCheck } from '../../src/draw/against-check.ts';
import { drawCultivarMeans } from '../../src/draw/cultivar-means.ts';
import { drawDifferences } from '../../src/draw/differences.ts';
import { drawNormalPlot } from '../../src/draw/normal-plot.ts';
import { drawPositionMaps } from '../../src/draw/position-maps.ts';
import { drawReplicatesCurve } from '../../src/draw/replicates-curve.ts';
import { drawResidualMaps } from '../../src/draw/residual-map.ts';
import { drawResidualPlot } from '../../src/draw/residual-plot.ts';
import { drawSeasonDifferences } from '../../src/draw/season-differences.ts';
import { drawSteadinessPlots } from '../../src/draw/steadiness-plots.ts';
import { drawTimeLine } from '../../src/draw/time-line.ts';
import { drawWaterOverTime } from '../../src/draw/water-over-time.ts';
import { drawWeightsByTreatment } from '../../src/draw/weights-by-treatment.ts';
import type { Figure } from '../../src/model/figure.ts';
import { showFirst } from '../../src/model/first-units.ts';
import type { Trial } from '../../src/model/trial.ts';
import { barley, trialsOf } from '../compare/barley-trials.ts';
import { blockFindings, blockTrial, madeUpInference } from '../support/example-trial.ts';
import { everyElement, parseDrawing, withClass } from '../support/xml.ts';

function everyFigure(trial: Trial): Figure[] {
  const findings = blockFindings(trial);
  const inference = madeUpInference();
  const drawn = [
    ...drawPositionMaps(trial, findings),
    ...drawResidualMaps(trial, findings),
    drawWeightsByTreatment(trial, findings),
    drawDifferences(trial, findings, inference),
    drawAgainstCheck(trial, findings, inference),
    drawTimeLine(trial),
    drawWaterOverTime(trial),
    drawResidualPlot(trial, findings, inference),
    drawNormalPlot(trial, findings, inference),
    drawReplicatesCurve(findings),
  ];
  return drawn.filter((figure) => figure !== null);
}

/** The figures of cultivars over trials, from published ones. */
function seasonFigures(name: (cultivar: string) => string): Figure[] {
  const entry = seasons(trialsOf(barley, 'Trebi')).find(({ measure }) => measure === 'per_pot')!;
  const differences = drawSeasonDifferences(entry, name)!;
  return [drawCultivarMeans(entry, name), differences, ...drawSteadinessPlots(entry, name).slice(0, 1)];
}

const hostile = '</text><script>alert("1")</script>&nbsp;\' onload="x" \u0000\u0007\uD800 <!-- ]]>';

/** The example trial with hostile text wherever a grower may write. */
function hostileTrial(): Trial {
  const trial = blockTrial();
  const { metadata } = trial;
  const [factor] = metadata.factors!;
  const [first, ...others] = factor.levels;
  return {
    ...trial,
    metadata: {
      ...metadata,
      factors: [{ ...factor, name: hostile, levels: [{ ...first, name: hostile }, ...others] }],
      containers: [
        { ...metadata.containers[0], row_1: hostile, column_1: hostile },
        ...metadata.containers.slice(1),
      ],
      variables: [{ ...metadata.variables[0], name: hostile }],
      events: [{ date: '2025-09-20', where: hostile, what: hostile }],
    },
  };
}

const drawAll = () => [...everyFigure(blockTrial()), ...seasonFigures((cultivar) => cultivar)];
const figures = drawAll();

describe.each(figures.map((figure) => [figure.id, figure] as const))('the figure %s', (_, figure) => {
  const root = parseDrawing(figure.svg);
  const elements = everyElement(root);

  it('is a picture named by its title and description', () => {
    const ids = [`${figure.id}-title`, `${figure.id}-desc`];
    expect(root.name).toBe('svg');
    expect(root.attributes['role']).toBe('img');
    expect(root.attributes['aria-labelledby']).toBe(ids.join(' '));
    expect(root.children.slice(0, 2).map(({ name, attributes }) => [name, attributes['id']])).toEqual([
      ['title', ids[0]],
      ['desc', ids[1]],
    ]);
    expect([root.children[0]!.text, root.children[1]!.text]).toEqual([
      figure.title,
      plainText(figure.description),
    ]);
    expect(figure.title).not.toBe('');
    expect(plainText(figure.description)).not.toBe('');
  });

  it('is described in the units that a page shows: no quantity of two units is among its plain words', () => {
    for (const piece of figure.description) {
      if (typeof piece !== 'string') continue;
      expect(piece).not.toMatch(/\d\u00A0(?:g|kg|cm|L|oz|lb|in|US)\b/);
    }
  });

  it('has ids of its own only', () => {
    const ids = elements.flatMap(({ attributes }) => attributes['id'] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id.startsWith(`${figure.id}-`)).toBe(true);
    expect(figure.id).toMatch(/^[a-z][a-z0-9-]*$/);
  });

  it('leaves colours and type to the style sheet, and asks for nothing from elsewhere', () => {
    for (const { name, attributes } of elements) {
      expect(name).not.toMatch(/^(?:script|style|image|use|foreignObject|a)$/);
      for (const key of ['style', 'fill', 'stroke', 'color', 'href', 'font-size', 'opacity']) {
        expect(attributes).not.toHaveProperty(key);
      }
    }
  });

  it('writes coordinates to two decimals at most, each a number', () => {
    for (const { attributes } of elements) {
      const written = Object.values(attributes).join(' ');
      expect(written).not.toMatch(/NaN|Infinity|undefined|null|\d\.\d{3,}/);
    }
    expect(root.text).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it('keeps its text from shrinking: a fluid drawing is never scaled, a fixed one has its own size', () => {
    const kinds = root.attributes['class']!.split(' ');
    if (kinds.includes('fluid')) {
      expect(root.attributes).not.toHaveProperty('viewBox');
      expect(root.attributes['width']).toBe('100%');
      // A stretched layer holds lines only: text or dots within it would be drawn out of shape.
      for (const layer of elements.filter(({ attributes }) => attributes['preserveAspectRatio'] === 'none')) {
        expect(
          everyElement(layer)
            .slice(1)
            .map(({ name }) => name),
        ).toEqual(['path']);
      }
    } else {
      expect(root.attributes['viewBox']).toBe(
        `0 0 ${root.attributes['width']!} ${root.attributes['height']!}`,
      );
    }
  });

  it('has a table twin without gaps in its shape', () => {
    for (const row of figure.table.rows) {
      expect(row).toHaveLength(figure.table.columns.length);
      expect(row[0]).not.toBe('');
      expect(row.join('')).not.toMatch(/NaN|undefined|null/);
    }
    expect(figure.table.rows.length).toBeGreaterThan(0);
  });

  it('shows no number of the data that its table lacks', () => {
    const cells = figure.table.rows.flat().join(' | ');
    const shown = withClass(root, 'cell')
      .flatMap((cell) => withClass(cell, 'number'))
      .concat(
        withClass(root, 'row').flatMap((row) => ['metric', 'us'].flatMap((kind) => withClass(row, kind))),
      )
      .flatMap(({ text }) => text.match(/[+\u2212]?\d[\d.\u202F]*/g) ?? []);
    for (const number of shown) expect(cells).toContain(number);
  });
});

describe('on a site of US units', () => {
  afterEach(() => {
    showFirst('metric');
  });

  it('a figure of weights is described in ounces to those who do not see it', () => {
    showFirst('us');
    for (const { id, svg, description } of drawAll().filter(({ description }) => description.length > 1)) {
      const said = parseDrawing(svg).children[1]!.text;
      expect(said, id).toBe(plainText(description, 'us'));
      expect(said, id).toMatch(/\d\u00A0(?:oz|US gal)/);
      expect(said, id).not.toMatch(/\d\u00A0(?:g|L)\b/);
    }
    expect(figures.filter(({ description }) => description.length > 1).length).toBeGreaterThan(6);
  });
});

describe('all figures', () => {
  it('are drawn alike twice', () => {
    expect(drawAll()).toEqual(figures);
  });

  it('have ids that differ', () => {
    expect(new Set(figures.map(({ id }) => id)).size).toBe(figures.length);
  });

  it('show hostile text as text', () => {
    const drawn = [...everyFigure(hostileTrial()), ...seasonFigures((cultivar) => `${cultivar} ${hostile}`)];
    expect(drawn).toHaveLength(figures.length);
    for (const { svg } of drawn) {
      const elements = everyElement(parseDrawing(svg));
      expect(elements.some(({ name }) => name === 'script')).toBe(false);
      expect(elements.some(({ attributes }) => 'onload' in attributes)).toBe(false);
    }
    expect(drawn.map(({ svg }) => svg).join('')).toContain('&lt;script&gt;');
  });
});
