import { describe, expect, it } from 'vitest';
import { drawAgainstCheck } from '../../src/draw/against-check.ts';
import { drawDifferences } from '../../src/draw/differences.ts';
import { narrow } from '../../src/draw/grid-map.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { blockFindings, blockTrial, madeUpInference } from '../support/example-trial.ts';
import { valueReader } from '../support/read-axis.ts';
import { everyElement, parseXml, withClass } from '../support/xml.ts';

const trial = blockTrial();
const findings = blockFindings(trial);
const inference = madeUpInference();
const differences = drawDifferences(trial, findings, inference)!;
const check = drawAgainstCheck(trial, findings, inference)!;
const plain = (text: string) => text.replaceAll('\u00A0', ' ').replaceAll('\u2212', '-');

/** Reads lower limit, estimate and upper limit of each row off the picture. */
function seen(svg: string): number[][] {
  const root = parseXml(svg);
  const read = valueReader(root);
  return withClass(root, 'row').map((row) => {
    const level = withClass(row, 'interval')[0]!.attributes;
    const mark = everyElement(row).find(({ children }) =>
      children.some(({ attributes }) => attributes['class'] === 'estimate'),
    )!;
    return [read(level['x1']), read(mark.attributes['x']), read(level['x2'])];
  });
}

describe('differences', () => {
  it('draws every estimate and its limits where the axis says they are', () => {
    const expected = inference.differences.map(({ lower, estimate, upper }) => [lower!, estimate!, upper!]);
    for (const [row, values] of expected.entries()) {
      for (const [index, value] of values.entries()) {
        expect(Math.abs(seen(differences.svg)[row]![index]! - value)).toBeLessThan(0.05);
      }
    }
  });

  it('draws a line at zero in every row, and says each difference before its p', () => {
    const root = parseXml(differences.svg);
    const read = valueReader(root);
    const zeros = withClass(root, 'zero').map(({ attributes }) => read(attributes['x1']));
    expect(zeros).toHaveLength(3);
    for (const zero of zeros) expect(Math.abs(zero)).toBeLessThan(0.05);
    const text = plain(withClass(root, 'row')[0]!.text);
    expect(text).toContain('Russet Plover - Cobalt Wren');
    expect(text.indexOf('-32 g')).toBeLessThan(text.indexOf('p = 0.004'));
  });

  it('never prints a limit as zero that is not', () => {
    expect(plain(withClass(parseXml(differences.svg), 'row')[1]!.text)).toContain('-0.02 to +1.22 oz');
  });

  it('sets what stands beside an estimate below it where both units leave it no room on a phone', () => {
    const texts = (p: number, percent: number) => {
      const entry = {
        ...inference.against_check[0]!,
        estimate: 138.4,
        p_adjusted: p,
        percent_of_check: percent,
      };
      const { svg } = drawAgainstCheck(trial, findings, { ...inference, against_check: [entry] })!;
      const row = withClass(parseXml(svg), 'row')[0]!;
      return everyElement(row)
        .filter(({ name }) => name === 'text')
        .map(({ text }) => plain(text));
    };
    expect(texts(0.0001, 119)).toContain('119% of the check, p < 0.001');
    expect(texts(0.0001, 119)).toContain('+138 g · +4.9 oz');
    for (const text of texts(0.0001, 119)) expect(textWidth(text, 13)).toBeLessThanOrEqual(narrow);
  });

  it('has a table twin', () => {
    expect(differences.table.rows).toHaveLength(3);
    expect(differences.table.rows[2]!.map(plain)).toEqual([
      'Slate Egret - Russet Plover',
      '+49',
      '+1.7',
      '+31',
      '+1.1',
      '+66',
      '+2.3',
      'p < 0.001',
    ]);
  });

  it('draws nothing where the design allowed no test', () => {
    const untested = { ...inference, verdict: 'not tested' as const };
    expect(drawDifferences(trial, findings, untested)).toBeNull();
    expect(drawAgainstCheck(trial, findings, untested)).toBeNull();
    expect(drawDifferences(trial, findings, { ...inference, differences: [] })).toBeNull();
    expect(drawAgainstCheck(trial, findings, { ...inference, against_check: [] })).toBeNull();
  });

  it('names each family of comparisons where there are several', () => {
    const [one] = inference.differences;
    const other = {
      ...one!,
      a: { cultivar: 'slate-egret', strength: '1' },
      b: { cultivar: 'slate-egret', strength: '0.5' },
    };
    const figure = drawDifferences(trial, findings, { ...inference, differences: [one!, other] })!;
    expect(figure.svg).toContain('Between levels of cultivar');
  });

  it('draws the largest of a great many, and says so', () => {
    const [one] = inference.differences;
    const many = Array.from({ length: 60 }, (_, index) => ({
      ...one!,
      estimate: index - 30,
      lower: index - 40,
      upper: index - 20,
    }));
    const figure = drawDifferences(trial, findings, { ...inference, differences: many })!;
    expect(figure.title).toBe(
      'The 45 largest of 60 differences in weight per plant harvested, with 95% intervals',
    );
    expect(figure.table.rows).toHaveLength(45);
  });
});

describe('against the check', () => {
  it('draws every level where the axis says it is, with its percent of the check', () => {
    const expected = inference.against_check.map(({ lower, estimate, upper }) => [lower!, estimate!, upper!]);
    for (const [row, values] of expected.entries()) {
      for (const [index, value] of values.entries()) {
        expect(Math.abs(seen(check.svg)[row]![index]! - value)).toBeLessThan(0.05);
      }
    }
    expect(plain(withClass(parseXml(check.svg), 'row')[1]!.text)).toContain('111% of the check, p = 0.042');
    expect(check.title).toContain('the check Cobalt Wren');
  });
});
