import { describe, expect, it, test } from 'vitest';
import { plainText } from '../../src/compute/words/words.ts';
import { drawPositionMaps } from '../../src/draw/position-maps.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { blockTrial, findingsOf, type Grown, trialOf } from '../support/example-trial.ts';
import { trialOf as plantsOf } from '../support/trial-of.ts';
import { everyElement, parseXml, withClass, type XmlElement } from '../support/xml.ts';

const trial = blockTrial();
const [first, second] = drawPositionMaps(trial, findingsOf(trial));
const cells = (svg: string) => withClass(parseXml(svg), 'cell');
const at = (svg: string, row: number, column: number) =>
  cells(svg).find(
    ({ attributes }) =>
      attributes['data-row'] === String(row) && attributes['data-column'] === String(column),
  )!;
const rect = (cell: XmlElement) => {
  const { x, y } = cell.children.find(({ name }) => name === 'rect')!.attributes;
  return { x: Number(x), y: Number(y) };
};
const shade = (cell: XmlElement) => cell.attributes['class']!.split(' ')[1]!;
const marks = (element: XmlElement) =>
  withClass(element, 'mark').map(({ attributes }) => attributes['data-status']);
const side = (svg: string, name: string) =>
  everyElement(parseXml(svg)).find(({ attributes }) => attributes['data-side'] === name)?.text;

const grid = (rows: number, columns: number): Grown[][] =>
  Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column): Grown => [
      ['cobalt-wren', 'russet-plover', 'slate-egret'][(row + column) % 3]!,
      100 + row * columns + column,
    ]),
  );

test('the table of a trial of several cuts has each cut in both units', () => {
  const both = [1, 2].flatMap((cut) =>
    [100, 120].map((weight, index) => ({
      container: 'T1',
      row: 1,
      column: 1 + index,
      treatment: { cultivar: 'a' },
      weight: weight * cut,
      cut,
    })),
  );
  const twice = plantsOf(both, { cuts: ['2025-10-20', '2025-11-20'] });
  const { columns, rows } = drawPositionMaps(twice, findingsOf(twice))[0]!.table;
  expect(columns.slice(2, 6).map(({ heading }) => heading)).toEqual([
    'Cut 1 (g)',
    'Cut 1 (oz)',
    'Cut 2 (g)',
    'Cut 2 (oz)',
  ]);
  // 100 g are 3.527 oz, and 200 g are 7.055 oz.
  expect(rows[0]!.slice(2, 6)).toEqual(['100', '3.5', '200', '7.1']);
});

describe('the map of a container', () => {
  it('writes each weight in the cell of its position, in g and, when chosen, in oz', () => {
    // Typed from the trial: row 3, column 2 of T1 holds 147 g, 147 / 28.349523125 = 5.185 oz.
    const cell = at(first!.svg, 3, 2);
    expect(withClass(cell, 'number').map(({ text }) => text)).toEqual(['147', '5.2']);
    expect(cells(first!.svg)).toHaveLength(9);
  });

  it('sets row 1 at the top and column 1 at the left', () => {
    const [corner, right, below] = [at(first!.svg, 1, 1), at(first!.svg, 1, 2), at(first!.svg, 2, 1)].map(
      rect,
    );
    expect(right!.x).toBeGreaterThan(corner!.x);
    expect(right!.y).toBe(corner!.y);
    expect(below!.y).toBeGreaterThan(corner!.y);
    expect(below!.x).toBe(corner!.x);
  });

  it('names the landmarks and what lies opposite', () => {
    expect(['top', 'bottom', 'left', 'right'].map((name) => side(first!.svg, name))).toEqual([
      'wall side',
      'opposite wall side',
      'north',
      'south',
    ]);
  });

  it('turns the columns round where the compass says that column 1 lay at the right', () => {
    const facingNorth = trialOf([{ id: 'B', row_1: 'north', column_1: 'east', grown: grid(2, 3) }]);
    const [figure] = drawPositionMaps(facingNorth, findingsOf(facingNorth));
    expect(rect(at(figure!.svg, 1, 1)).x).toBeGreaterThan(rect(at(figure!.svg, 1, 3)).x);
    expect([side(figure!.svg, 'left'), side(figure!.svg, 'right')]).toEqual(['west', 'east']);
    expect(plainText(figure!.description)).toContain('column 1 at the right beside the east');
  });

  it('marks dead, culled, not weighed and no regrowth by shapes that all differ, and keys those in use', () => {
    expect(marks(at(first!.svg, 2, 2))).toEqual(['dead']);
    expect(marks(at(second!.svg, 2, 2))).toEqual(['culled']);
    expect(marks(at(second!.svg, 1, 3))).toEqual(['not weighed']);
    expect(marks(at(second!.svg, 3, 3))).toEqual(['no regrowth']);
    const key = withClass(parseXml(second!.svg), 'mark-key')[0]!;
    expect(marks(key)).toEqual(['no regrowth', 'not weighed', 'culled']);
    const shapes = withClass(key, 'mark').map(({ attributes }) => attributes['d']);
    expect(new Set(shapes).size).toBe(3);
  });

  it('writes no number where nothing was weighed, and never shades a dead plant as a light one', () => {
    for (const cell of [at(first!.svg, 2, 2), at(second!.svg, 1, 3), at(second!.svg, 2, 2)]) {
      expect(withClass(cell, 'number')).toEqual([]);
      expect(shade(cell)).toBe('blank');
    }
  });

  it('shades by weight on one scale for all containers', () => {
    const shades = [first!, second!].flatMap(({ svg }) =>
      cells(svg).flatMap((cell) => {
        const number = withClass(cell, 'metric')[0]?.text;
        return number === undefined
          ? []
          : [[Number(number), Number(shade(cell).replace('step-', ''))] as const];
      }),
    );
    // 102 g to 180 g in both tanks; the boundaries are 120, 140, 160 and 180 g.
    const expected = (grams: number) => [120, 140, 160, 180].filter((boundary) => grams >= boundary).length;
    const used = [...new Set(shades.map(([, step]) => step))].sort((a, b) => a - b);
    for (const [grams, step] of shades) expect(used.indexOf(step)).toBe(expected(grams));
    expect(used[0]).toBe(1);
    expect(used.at(-1)).toBe(7);
  });

  it('has a table twin with every position, its weight in both units and its fate', () => {
    const { table } = first!;
    expect(table.columns.map(({ heading }) => heading)).toEqual([
      'Position',
      'Treatment',
      'Fresh weight (g)',
      'Fresh weight (oz)',
      'Status',
    ]);
    expect(table.rows).toHaveLength(9);
    expect(table.rows[7]).toEqual(['row 3, column 2', 'Cobalt Wren', '147', '5.2', '']);
    expect(table.rows[4]!.at(-1)).toBe('dead');
  });

  it('outlines places that belong to no trial', () => {
    const holed = trialOf([{ id: 'B', grown: [[['cobalt-wren', 100], null, ['slate-egret', 120]]] }]);
    const [figure] = drawPositionMaps(holed, findingsOf(holed));
    expect(shade(at(figure!.svg, 1, 2))).toBe('outside');
    expect(figure!.table.rows).toHaveLength(2);
  });
});

describe('maps of any size', () => {
  it.each([
    [1, 1],
    [1, 10],
    [8, 8],
    [20, 20],
  ])('keeps %s x %s cells apart and inside the drawing', (rows, columns) => {
    const large = trialOf([{ id: 'B', row_1: 'path', column_1: 'west', grown: grid(rows, columns) }]);
    const [figure] = drawPositionMaps(large, findingsOf(large));
    const root = parseXml(figure!.svg);
    const [, , width, height] = root.attributes['viewBox']!.split(' ').map(Number);
    const boxes = withClass(root, 'cell').map((cell) => cell.children[0]!.attributes);
    expect(boxes).toHaveLength(rows * columns);
    const places = new Set(boxes.map(({ x, y }) => `${x!} ${y!}`));
    expect(places.size).toBe(rows * columns);
    for (const box of boxes) {
      expect(Number(box['x'])).toBeGreaterThanOrEqual(0);
      expect(Number(box['x']) + Number(box['width'])).toBeLessThanOrEqual(width!);
      expect(Number(box['y']) + Number(box['height'])).toBeLessThanOrEqual(height!);
      expect(Number(box['width'])).toBeGreaterThanOrEqual(30);
    }
  });

  it('keeps a map of up to four columns within a phone', () => {
    const narrow = trialOf([{ id: 'T1', row_1: 'wall side', column_1: 'north', grown: grid(3, 4) }]);
    const [figure] = drawPositionMaps(narrow, findingsOf(narrow));
    expect(Number(parseXml(figure!.svg).attributes['width'])).toBe(288);
  });

  it('shortens names where cells are narrow, and keys them', () => {
    const large = trialOf([{ id: 'B', grown: grid(8, 8) }]);
    const [figure] = drawPositionMaps(large, findingsOf(large));
    expect(withClass(at(figure!.svg, 1, 1), 'name').map(({ text }) => text)).toEqual(['CW']);
    expect(withClass(parseXml(figure!.svg), 'name-key')[0]!.text).toBe(
      'CWCobalt WrenRPRusset PloverSESlate Egret',
    );
  });

  it('keys a name that is wider than the map in lines that end within it', () => {
    const large = trialOf([{ id: 'B', grown: grid(3, 4) }]);
    const long = 'Donaudampfschifffahrtsgesellschaftskapitänslettuce of Upper Moorwen, selection no. 7';
    const names = (_: string, level: string) => (level === 'cobalt-wren' ? long : level);
    const [figure] = drawPositionMaps(large, findingsOf(large), { names });
    const svg = parseXml(figure!.svg);
    const key = withClass(svg, 'name-key')[0]!;
    expect(key.text).toContain('selection no. 7');
    const texts = withClass(key, 'tick');
    for (const { attributes, text } of texts) {
      expect(Number(attributes['x']) + textWidth(text, 12)).toBeLessThanOrEqual(
        Number(svg.attributes['width']),
      );
      expect(Number(attributes['y'])).toBeLessThan(Number(svg.attributes['height']));
    }
    // Nothing stands on anything else.
    const places = texts.map(({ attributes }) => `${attributes['x']} ${attributes['y']}`);
    expect(new Set(places).size).toBe(places.length);
  });

  it("says a whole container's treatment once", () => {
    const one = trialOf([
      {
        id: 'T1',
        grown: [
          [
            ['slate-egret', 100],
            ['slate-egret', 120],
          ],
        ],
      },
    ]);
    const [figure] = drawPositionMaps(one, findingsOf(one));
    expect(withClass(parseXml(figure!.svg), 'heading')[0]!.text).toBe('T1: Slate Egret');
    expect(withClass(parseXml(figure!.svg), 'name')).toEqual([]);
  });

  it('draws a map where nothing was weighed, and gives containers of alike names ids of their own', () => {
    const none = trialOf([
      { id: 'T 1', grown: [[['slate-egret', 'not weighed']]] },
      { id: 'T-1', grown: [[['slate-egret', 'dead']]] },
    ]);
    const figures = drawPositionMaps(none, findingsOf(none));
    expect(figures.map(({ id }) => id)).toEqual(['position-map-t-1', 'position-map-t-1-2']);
    expect(plainText(figures[0]!.description)).toContain('Nothing was weighed.');
  });
});
