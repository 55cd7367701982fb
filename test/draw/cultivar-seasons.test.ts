import { describe, expect, it } from 'vitest';
import { compareGroup } from '../../src/compare/compare-group.ts';
import { seasonGroups } from '../../src/compare/season-groups.ts';
import { drawCultivarSeasons } from '../../src/draw/cultivar-seasons.ts';
import { narrow } from '../../src/draw/grid-map.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { barley, trialsOf } from '../compare/barley-trials.ts';
import { valueReader } from '../support/read-axis.ts';
import { everyElement, parseDrawing, withClass } from '../support/xml.ts';

const group = seasonGroups(trialsOf(barley, 'Trebi')).find(({ measure }) => measure === 'per_pot')!;
const entry = compareGroup(group)!;
const name = (cultivar: string) => cultivar;
const figure = drawCultivarSeasons(entry, 'Velvet', name)!;
const root = parseDrawing(figure.svg);
const yieldOf = (variety: string, trial: string) =>
  barley.find((cell) => cell.variety === variety && cell.trial === trial)!.y;

describe('a cultivar beside the check, trial by trial', () => {
  it('draws both where the axis says they are, the trials in their order', () => {
    const read = valueReader(root);
    const rows = withClass(root, 'row');
    expect(rows).toHaveLength(12);
    rows.forEach((row, index) => {
      const trial = entry.trials[index]!.id;
      const check = everyElement(row).find(({ children }) =>
        children.some(({ attributes }) => attributes['class'] === 'mean'),
      )!;
      expect(
        Math.abs(read(withClass(row, 'dot')[0]!.attributes['cx']) - yieldOf('Velvet', trial)),
      ).toBeLessThan(0.1);
      expect(Math.abs(read(check.attributes['x']) - yieldOf('Trebi', trial))).toBeLessThan(0.1);
    });
  });

  it('has a table twin with the percent of the check', () => {
    const { id } = entry.trials[0]!;
    const percent = Math.round((100 * yieldOf('Velvet', id)) / yieldOf('Trebi', id));
    expect(figure.table.rows).toHaveLength(12);
    expect(figure.table.rows[0]!.at(-1)).toBe(String(percent));
    expect(figure.table.rows[0]).toHaveLength(figure.table.columns.length);
  });

  it('is named by its title and description, and leaves colours to the style sheet', () => {
    expect(root.attributes['aria-labelledby']).toBe(`${figure.id}-title ${figure.id}-desc`);
    expect(figure.title).toContain('Velvet beside the check Trebi');
    for (const { attributes } of everyElement(root)) {
      expect(Object.keys(attributes)).not.toContain('style');
      expect(Object.values(attributes).join(' ')).not.toMatch(/NaN|Infinity|undefined|\d\.\d{3,}/);
    }
  });

  it('escapes what a grower may have written', () => {
    const hostile = drawCultivarSeasons(entry, 'Velvet', (cultivar) => `${cultivar}</text><script>`)!;
    expect(hostile.svg).not.toContain('<script>');
    expect(() => parseDrawing(hostile.svg)).not.toThrow();
  });

  it('draws nothing of the check itself, nor where no trial grew both', () => {
    expect(drawCultivarSeasons(entry, 'Trebi', name)).toBeNull();
    const apart = trialsOf(
      barley.filter(({ variety, trial }) => variety === (trial.endsWith('1931') ? 'Trebi' : 'Velvet')),
      'Trebi',
    );
    const none = compareGroup(seasonGroups(apart).find(({ measure }) => measure === 'per_pot')!)!;
    expect(drawCultivarSeasons(none, 'Velvet', name)).toBeNull();
  });

  it('keeps its words within a phone’s column and apart, however long the names are', () => {
    const long = (cultivar: string) => `${cultivar} of the long valley above the second weir, selection 7`;
    const grams = {
      ...entry,
      unit: 'g',
      trials: entry.trials.map((trial) => ({ ...trial, replicated: false })),
    };
    for (const row of withClass(parseDrawing(drawCultivarSeasons(grams, 'Velvet', long)!.svg), 'row')) {
      const texts = everyElement(row).filter(({ name: kind }) => kind === 'text');
      const [value] = withClass(row, 'strong');
      for (const text of texts) {
        const bold = text === value || text.attributes['class'] === 'heading';
        const width = textWidth(text.text, bold ? (text === value ? 13 : 14) : 12, bold);
        const beside = text !== value && text.attributes['y'] === value!.attributes['y'];
        expect(width).toBeLessThanOrEqual(narrow - (beside ? textWidth(value!.text, 13, true) : 0));
      }
      const places = texts.filter((text) => text !== value).map(({ attributes }) => Number(attributes['y']));
      expect(places).toEqual([...places].sort((a, b) => a - b));
      expect(new Set(places).size).toBe(places.length);
    }
  });
});
