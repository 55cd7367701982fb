import { describe, expect, it } from 'vitest';
import { levelNames } from '../../src/compute/format/level-names.ts';
import { computeFindings } from '../../src/compute/findings.ts';
import { growthStage } from '../../src/compute/growth-stages.ts';
import { otherVariables } from '../../src/compute/other-variables.ts';
import { otherVariableTable } from '../../src/compute/tables/other-variable-table.ts';
import { drawOtherVariable } from '../../src/draw/other-variable.ts';
import type { HarvestRecord, Trial, Variable } from '../../src/model/trial.ts';
import { trialOf } from '../support/trial-of.ts';

const wren = [3, 1, 0, 1];
const egret = [2, 3, null, 3];

/** Two cultivars of four plants each, lots drawn for positions, with one more variable or several. */
function withVariables(
  variables: readonly Variable[],
  valuesOf: (mark: number | null, index: number) => HarvestRecord['values'],
  change: (record: HarvestRecord, index: number) => HarvestRecord = (record) => record,
): Trial {
  const marks = [...wren, ...egret];
  const plain = trialOf(
    marks.map((_, index) => ({
      container: 'T1',
      treatment: { cultivar: index < 4 ? 'wren' : 'egret' },
      weight: 100 + 3 * index,
    })),
  );
  const [primary] = plain.metadata.variables;
  return {
    ...plain,
    metadata: { ...plain.metadata, variables: [primary, ...variables] },
    harvest: plain.harvest.map((record, index) =>
      change({ ...record, values: { ...record.values, ...valuesOf(marks[index]!, index) } }, index),
    ),
  };
}

const variable = (more: Partial<Variable> & Pick<Variable, 'kind'>): Variable => ({
  id: 'other',
  name: 'Tip burn',
  of: 'plant',
  ...more,
});

describe('otherVariables', () => {
  it('is empty where only the primary variable was recorded, and the findings leave the key out', () => {
    const trial = withVariables([], () => ({}));
    expect(otherVariables(trial)).toEqual([]);
    expect(computeFindings(trial)).not.toHaveProperty('other_variables');
  });

  it('gives marks a median and how often each was given, and no mean', () => {
    const [entry] = otherVariables(
      withVariables([variable({ kind: 'scored' })], (mark) => ({ other: mark })),
    );
    expect(entry?.variable).toEqual({ id: 'other', name: 'Tip burn', unit: '', kind: 'scored', of: 'plant' });
    expect(entry?.treatments.map(({ n, missing, mean, median }) => ({ n, missing, mean, median }))).toEqual([
      { n: 4, missing: 0, mean: null, median: 1 },
      { n: 3, missing: 1, mean: null, median: 3 },
    ]);
    expect(entry?.treatments[0]?.counts).toEqual([
      { value: 0, count: 1 },
      { value: 1, count: 2 },
      { value: 3, count: 1 },
    ]);
  });

  it('gives counts a mean, a spread and how often each came up', () => {
    const [entry] = otherVariables(
      withVariables([variable({ kind: 'counted' })], (mark) => ({ other: mark })),
    );
    // (3 + 1 + 0 + 1) / 4; squares about it: 3.0625 + 0.0625 + 1.5625 + 0.0625 = 4.75, over 3.
    expect(entry?.treatments[0]?.mean).toBe(1.25);
    expect(entry?.treatments[0]?.sd).toBeCloseTo(Math.sqrt(4.75 / 3), 12);
    expect(entry?.treatments[0]?.counts).toHaveLength(3);
  });

  it('gives what was measured its quartiles of type 7, and no counts', () => {
    const [entry] = otherVariables(
      withVariables([variable({ kind: 'measured', unit: 'cm' })], (mark) => ({ other: mark })),
    );
    // 0 1 1 3: the quartiles lie at places 1.75 and 3.25.
    expect(entry?.treatments[0]).toMatchObject({ lower_quartile: 0.75, upper_quartile: 1.5, counts: null });
  });

  it("gives yes or no its part, and Wilson's interval where plants were allotted singly", () => {
    const [entry] = otherVariables(
      withVariables([variable({ kind: 'scored', scale: 'yes or no' })], (mark) => ({
        other: mark === null ? null : Number(mark > 0),
      })),
    );
    const [first] = entry!.treatments;
    expect(first?.proportion).toMatchObject({ yes: 3, proportion: 0.75 });
    // Wilson (1927) by hand for 3 of 4, z = 1.959964: (3 + 1.920729 ± 1.959964 sqrt(0.75 + 0.960365)) / 7.841459.
    expect(first?.proportion?.lower).toBeCloseTo(0.300642, 5);
    expect(first?.proportion?.upper).toBeCloseTo(0.954413, 5);
  });

  it('withholds that interval where containers were allotted, and says why', () => {
    const trial = withVariables([variable({ kind: 'scored', scale: 'yes or no' })], (mark) => ({
      other: mark === null ? null : 1,
    }));
    const apart = {
      ...trial,
      positions: trial.positions.map((position) => ({
        ...position,
        container: position.treatment['cultivar'] === 'wren' ? 'T1' : 'T2',
      })),
      harvest: trial.harvest.map((record, index) => ({ ...record, container: index < 4 ? 'T1' : 'T2' })),
    };
    const [entry] = otherVariables(apart);
    expect(entry?.treatments[0]?.proportion).toMatchObject({
      yes: 4,
      proportion: 1,
      lower: null,
      upper: null,
    });
    expect(entry?.treatments[0]?.reason).toMatch(/not the replicates/);
  });

  it('counts a plant once with the median of its judges', () => {
    const judges = ['a', 'b', 'c'].map((judge) =>
      variable({
        id: `taste_${judge}`,
        name: `Taste ${judge}`,
        kind: 'scored',
        panel: 'Taste',
        judge,
        blind: true,
      }),
    );
    const trial = withVariables(judges, (mark) => ({ taste_a: mark, taste_b: 2, taste_c: 9 }));
    const [entry, ...more] = otherVariables(trial);
    expect(more).toEqual([]);
    expect(entry?.variable).toMatchObject({ id: 'Taste', name: 'Taste', judges: 3 });
    // Medians of 3 2 9, 1 2 9, 0 2 9, 1 2 9.
    expect(entry?.treatments[0]?.counts).toEqual([
      { value: 2, count: 3 },
      { value: 3, count: 1 },
    ]);
    expect(otherVariableTable(trial, computeFindings(trial), levelNames(trial), entry!).notes).toContain(
      '3 judges, who did not know the treatments; each plant or pot counts with the median of their marks.',
    );
  });

  it('prints half a mark, the median of two judges, as half and not as the next whole one', () => {
    const judges = ['a', 'b'].map((judge) =>
      variable({ id: `taste_${judge}`, name: 'Taste', kind: 'scored', panel: 'Taste', judge }),
    );
    const trial = withVariables(judges, (mark) => ({ taste_a: mark, taste_b: 2 }));
    const [entry] = otherVariables(trial);
    // Of 3 and 2, 1 and 2, 0 and 2, 1 and 2.
    expect(entry?.treatments[0]?.counts).toEqual([
      { value: 1, count: 1 },
      { value: 1.5, count: 2 },
      { value: 2.5, count: 1 },
    ]);
    const { rows } = otherVariableTable(trial, computeFindings(trial), levelNames(trial), entry!);
    expect(rows[0]?.cells.slice(-4)).toEqual(['1', '1.5', '2.5', '1: 1, 1.5: 2, 2.5: 1']);
  });

  it('leaves out dead plants, and counts one that grew without a value as unknown', () => {
    const trial = withVariables(
      [variable({ kind: 'scored' })],
      (mark) => ({ other: mark }),
      (record, index) =>
        index === 0 ? { ...record, status: 'dead', values: { fresh_weight: null, other: null } } : record,
    );
    expect(otherVariables(trial)[0]?.treatments.map(({ n, missing }) => [n, missing])).toEqual([
      [3, 0],
      [3, 1],
    ]);
  });

  it('leaves out a cut at which it was not recorded', () => {
    const trial = withVariables([variable({ kind: 'scored' })], () => ({ other: null }));
    expect(otherVariables(trial)).toEqual([]);
  });
});

describe('The figure of such a variable', () => {
  it.each([
    ['scored', {}],
    ['counted', {}],
    ['measured', { unit: 'cm' }],
    ['scored', { scale: 'yes or no' as const }],
  ] as const)('draws a row a treatment, with a table twin: %s %o', (kind, more) => {
    const trial = withVariables([variable({ kind, ...more })], (mark) => ({
      other: 'scale' in more ? Number((mark ?? 0) > 1) : mark,
    }));
    const findings = computeFindings(trial);
    const figure = drawOtherVariable(trial, findings, findings.other_variables![0]!);
    expect(figure?.svg.match(/class="row"/g)).toHaveLength(2);
    expect(figure?.table.rows.map(([name]) => name)).toEqual(['Wren', 'Egret']);
    expect(figure?.svg).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('growthStage', () => {
  it('says the principal stage of a BBCH code, and the stage within it where vegetables have one in common', () => {
    expect(growthStage(0)).toBe('germination, sprouting, bud development: dry seed');
    expect(growthStage(11)).toBe('leaf development: 1 true leaf unfolded');
    expect(growthStage(13)).toBe('leaf development: 3 true leaves unfolded');
    expect(growthStage(19)).toBe('leaf development: 9 or more true leaves unfolded');
    expect(growthStage(22)).toBe('formation of side shoots or tillering: 2 side shoots visible');
    expect(growthStage(43)).toBe(
      'development of harvestable vegetative parts: about 30% of the size or mass that is expected',
    );
    expect(growthStage(49)).toBe('development of harvestable vegetative parts: typical size reached');
    expect(growthStage(51)).toBe('inflorescence emergence: the main shoot begins to elongate');
    expect(growthStage(61)).toBe('flowering: about 10% of the flowers open');
    expect(growthStage(99)).toBe('senescence, beginning of dormancy');
    expect([20, 40, 66].map(growthStage)).toEqual([
      'formation of side shoots or tillering',
      'development of harvestable vegetative parts',
      'flowering',
    ]);
  });

  it('is null for what is no code', () => {
    expect([-1, 100, 4.5].map(growthStage)).toEqual([null, null, null]);
  });
});
