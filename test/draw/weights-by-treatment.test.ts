import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/compute/words/words.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { drawWeightsByTreatment } from '../../src/draw/weights-by-treatment.ts';
import { blockFindings, blockTrial, findingsOf, trialOf } from '../support/example-trial.ts';
import { valueReader } from '../support/read-axis.ts';
import { everyElement, parseXml, withClass, type XmlElement } from '../support/xml.ts';

const trial = blockTrial();
const plain = drawWeightsByTreatment(trial, findingsOf(trial));
const tested = drawWeightsByTreatment(trial, blockFindings(trial));
const rowsOf = (svg: string) => withClass(parseXml(svg), 'row');
const headings = (svg: string) => rowsOf(svg).map((row) => withClass(row, 'heading')[0]!.text);
const dots = (row: XmlElement) => withClass(row, 'dot').map(({ attributes }) => attributes);

/** The weights typed into the example trial, lost plants left out. */
const weights = {
  'Slate Egret': [166, 171, 158, 180, 175, 149],
  'Cobalt Wren (check)': [152, 139, 147, 160],
  'Russet Plover': [118, 131, 102, 121],
};

describe('weights by treatment', () => {
  it('puts the heaviest treatment first, or keeps the given order', () => {
    expect(headings(plain.svg)).toEqual(Object.keys(weights));
    const given = drawWeightsByTreatment(trial, findingsOf(trial), { order: 'given' });
    expect(headings(given.svg)).toEqual(['Cobalt Wren (check)', 'Russet Plover', 'Slate Egret']);
  });

  it('draws every plant where the axis says its weight is', () => {
    const read = valueReader(parseXml(plain.svg));
    const ascending = (values: readonly number[]) => [...values].sort((a, b) => a - b);
    for (const [index, values] of Object.values(weights).entries()) {
      const seen = ascending(dots(rowsOf(plain.svg)[index]!).map(({ cx }) => read(cx)));
      expect(seen).toHaveLength(values.length);
      for (const [n, value] of ascending(values).entries())
        expect(Math.abs(seen[n]! - value)).toBeLessThan(0.05);
    }
  });

  it('has a US axis that agrees with the metric one', () => {
    const root = parseXml(plain.svg);
    const [grams, ounces] = [valueReader(root), valueReader(root, 'us')];
    for (const place of ['10%', '50%', '90%'])
      expect(ounces(place) * 28.349523125).toBeCloseTo(grams(place), 0);
  });

  it('marks and writes the mean of the weights', () => {
    // (166 + 171 + 158 + 180 + 175 + 149) / 6 = 166.5; (152 + 139 + 147 + 160) / 4 = 149.5; 472 / 4 = 118
    const read = valueReader(parseXml(plain.svg));
    const marked = rowsOf(plain.svg).map((row) =>
      read(
        everyElement(row).find(({ children }) =>
          children.some(({ attributes }) => attributes['class'] === 'mean'),
        )!.attributes['x'],
      ),
    );
    for (const [index, mean] of [166.5, 149.5, 118].entries())
      expect(Math.abs(marked[index]! - mean)).toBeLessThan(0.05);
    expect(withClass(rowsOf(plain.svg)[2]!, 'strong')[0]!.text.replaceAll('\u00A0', ' ')).toBe(
      '118 g · 4.2 oz',
    );
  });

  it('lets no two dots lie on each other at the width of a page', () => {
    const crowded = trialOf([
      {
        id: 'T1',
        grown: [Array.from({ length: 30 }, (_, index) => ['cobalt-wren', 100 + (index % 3)] as const)],
      },
    ]);
    const [row] = rowsOf(drawWeightsByTreatment(crowded, findingsOf(crowded)).svg);
    const places = dots(row!).map(({ cx, cy }) => ({
      x: (Number(cx!.replace('%', '')) / 100) * 736,
      y: Number(cy),
    }));
    for (const [index, a] of places.entries()) {
      for (const b of places.slice(index + 1)) {
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(8.9);
      }
    }
  });

  it('draws limits of a tested mean before those of the plants', () => {
    const read = valueReader(parseXml(tested.svg));
    const level = withClass(rowsOf(tested.svg)[0]!, 'interval')[0]!.attributes;
    expect(Math.abs(read(level['x1']) - 156.7)).toBeLessThan(0.05);
    expect(Math.abs(read(level['x2']) - 176.3)).toBeLessThan(0.05);
  });

  it('draws no interval where plants are not the replicates and nothing was tested', () => {
    const tanks = trialOf(
      [
        {
          id: 'T1',
          grown: [
            [
              ['cobalt-wren', 100],
              ['cobalt-wren', 120],
              ['cobalt-wren', 110],
            ],
          ],
        },
        {
          id: 'T2',
          grown: [
            [
              ['slate-egret', 130],
              ['slate-egret', 150],
              ['slate-egret', 160],
            ],
          ],
        },
      ],
      { design: { arrangement: 'unreplicated', allotted: 'container', randomised: false } },
    );
    const figure = drawWeightsByTreatment(tanks, findingsOf(tanks));
    expect(withClass(parseXml(figure.svg), 'interval')).toEqual([]);
    expect(plainText(figure.description)).toContain('No interval is drawn');
    expect(figure.table.columns.some(({ heading }) => heading.includes('limit'))).toBe(false);
  });

  it('takes no limits from an analysis that was not tested', () => {
    const findings = blockFindings(trial);
    const [inference] = findings.inference;
    const untested = {
      ...findings,
      treatments: findings.treatments.map((each) => ({
        ...each,
        per_plant_harvested: each.per_plant_harvested && { ...each.per_plant_harvested, ci95: null },
      })),
      inference: [{ ...inference!, verdict: 'not tested' as const }],
    };
    expect(withClass(parseXml(drawWeightsByTreatment(trial, untested).svg), 'interval')).toEqual([]);
  });

  it('says an adjusted mean beside the plain one, in the picture and in the table', () => {
    // The plain mean of the four Russet Plovers is 118 g; an analysis of unequal blocks may adjust it.
    const findings = blockFindings(trial);
    const [inference] = findings.inference;
    const means = inference!.means.map((each) =>
      each.treatment['cultivar'] === 'russet-plover'
        ? { ...each, mean: 123.2, lower: 113, upper: 133.4 }
        : each,
    );
    const figure = drawWeightsByTreatment(trial, { ...findings, inference: [{ ...inference!, means }] });
    const row = rowsOf(figure.svg)[2]!;
    expect(row.text.replaceAll('\u00A0', ' ')).toContain(
      'Adjusted mean 123 g · 4.3 oz95% interval 113 to 133 g',
    );
    expect(withClass(row, 'interval')).toHaveLength(4);
    expect(figure.table.columns.map(({ heading }) => heading)).toContain('Adjusted mean (g)');
    expect(figure.table.rows[2]!.slice(2, 6)).toEqual(['118', '4.2', '123', '4.3']);
  });

  it('breaks a long name, so that it never runs into the mean on a phone', () => {
    const named = drawWeightsByTreatment(trial, findingsOf(trial), {
      names: () => 'A cultivar whose breeder had a great deal to say about it',
    });
    const lines = withClass(rowsOf(named.svg)[0]!, 'heading').map(({ text }) => text);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(textWidth(line, 14)).toBeLessThanOrEqual(190);
  });

  it('says what is not among the dots', () => {
    expect(rowsOf(plain.svg)[2]!.text).toContain('n = 4, 1 dead, 1 culled');
    expect(rowsOf(plain.svg)[1]!.text).toContain('n = 4, 1 no regrowth, 1 not weighed');
  });

  it('has a table twin with mean, limits and every value', () => {
    const row = tested.table.rows[0]!;
    expect(tested.table.columns.map(({ heading }) => heading)).toEqual([
      'Treatment',
      'n',
      'Mean (g)',
      'Mean (oz)',
      'Lower 95% limit (g)',
      'Lower 95% limit (oz)',
      'Upper 95% limit (g)',
      'Upper 95% limit (oz)',
      'Not among them',
      'Each value, ascending (g)',
    ]);
    // 166.5 rounds to 167 and 156.7, 176.3 to 157, 176; a mean of six weights read to 1 g carries no decimal
    // since 1 / sqrt(72) = 0.118 g.
    expect(row).toEqual([
      'Slate Egret',
      '6',
      '167',
      '5.9',
      '157',
      '5.5',
      '176',
      '6.2',
      '',
      '149, 158, 166, 171, 175, 180',
    ]);
  });

  it('gives a name a line of its own rather than break it beside its mean, the means then beside the counts', () => {
    const grown = [
      ['cobalt-wren', 100],
      ['cobalt-wren', 120],
      ['slate-egret', 130],
      ['slate-egret', 110],
    ] as [string, number][];
    const whole = trialOf([{ id: 'T1', grown: [grown] }]);
    const places = (name: string, of = whole) => {
      const { svg } = drawWeightsByTreatment(of, findingsOf(of), { names: () => name });
      return rowsOf(svg).map((row) => {
        const [mean] = withClass(row, 'strong');
        const count = everyElement(row).find(({ text }) => text.startsWith('n = '))!;
        const lines = withClass(row, 'heading');
        return {
          lines: lines.length,
          withName: mean!.attributes['y'] === lines[0]!.attributes['y'],
          withCount: mean!.attributes['y'] === count.attributes['y'],
          // Both are shown on a phone until a unit is chosen; 288 px is its column.
          room: 288 - textWidth(count.text, 12) - textWidth(mean!.text, 13, true),
        };
      });
    };
    for (const { lines, withName } of places('Slate Egret'))
      expect({ lines, withName }).toEqual({ lines: 1, withName: true });
    const long = places('Breeding line number twelve');
    expect(long.map(({ lines, withCount }) => ({ lines, withCount }))).toEqual(
      long.map(() => ({ lines: 1, withCount: true })),
    );
    expect(Math.min(...long.map(({ room }) => room))).toBeGreaterThan(0);
    // Where as much was lost as in this one, the counts leave no room: the name is broken after all.
    expect(
      places('Breeding line number twelve', trial).map(({ lines, withName }) => lines > 1 && withName),
    ).toEqual([true, true, true]);
  });

  it('draws a trial where nothing was weighed', () => {
    const none = trialOf([
      {
        id: 'T1',
        grown: [
          [
            ['slate-egret', 'dead'],
            ['cobalt-wren', 'not weighed'],
          ],
        ],
      },
    ]);
    const figure = drawWeightsByTreatment(none, findingsOf(none));
    expect(withClass(parseXml(figure.svg), 'dot')).toEqual([]);
    expect(plainText(figure.description)).toContain('none known');
  });
});
