import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../../src/commands/folders.ts';
import { loadTrial } from '../../../src/commands/load-content.ts';
import { computeFindings } from '../../../src/compute/findings.ts';
import { changedCells } from '../../../src/compute/versions/changed-cells.ts';
import { levelOfChange } from '../../../src/compute/versions/level-of-change.ts';
import { resolvedQueries } from '../../../src/compute/versions/resolved-queries.ts';
import { versionSteps } from '../../../src/compute/versions/version-steps.ts';
import type { Query, Release, Trial, TrialMetadata } from '../../../src/model/trial.ts';
import { trialOf } from '../../support/trial-of.ts';

const cultivars = [{ id: 'slate-egret', name: 'Slate Egret' }];

const demo = async () => (await loadTrial(join(root, 'content', 'trials', 'autumn-lettuce-2025'))).trial!;

/** Two containers of two plants, the first weight to be chosen. */
const trialWith = (weight: number | null, metadata: Partial<TrialMetadata> = {}): Trial => {
  const plant = (container: string, level: string, grams: number | null) => ({
    container,
    treatment: { cultivar: level },
    weight: grams,
  });
  return trialOf(
    [
      plant('T1', 'a', weight),
      plant('T1', 'b', 150),
      plant('T2', 'a', 120),
      plant('T2', 'b', 140),
      plant('T3', 'a', 130),
      plant('T3', 'b', 155),
    ],
    { metadata },
  );
};

const releases = (...versions: string[]): [Release, ...Release[]] =>
  versions.map((version, index) => ({ version, date: `2025-11-0${String(index + 1)}` })) as [
    Release,
    ...Release[],
  ];

const query = (rule: string, where: string | null): Query => ({
  problem: {
    rule,
    severity: 'warning',
    file: 'trial.yaml',
    line: 3,
    column: 1,
    found: null,
    expected: null,
    message: rule,
    hint: null,
    where,
  },
  reason: null,
});

describe('the versions of the demo', () => {
  it('show the weight of T3 2 2 and the total of T2 corrected, and what that moved', async () => {
    const trial = await demo();
    const [newest, first] = versionSteps(trial, computeFindings(trial), cultivars);
    expect(newest).toMatchObject({ since: '1.0.0', reason: null, release: { version: '1.1.0' } });
    expect(newest!.changes).toContainEqual({
      file: 'harvest.csv',
      row: 'T3 2 2',
      column: 'fresh_weight',
      before: '107',
      after: '170',
    });
    expect(newest!.changes).toContainEqual({
      file: 'trial.yaml',
      row: 'containers T2',
      column: 'weighed_total.value',
      before: '1484',
      after: '1448',
    });
    // By hand: one of Slate Egret's twelve plants is 63 g heavier, so that their mean rises by 5.25 g.
    const moved = newest!.figures.find(({ figure }) => figure === 'Slate Egret: mean per plant set')!;
    const grams = (text: unknown) => Number.parseFloat((text as { metric: string }).metric);
    expect(grams(moved.after) - grams(moved.before)).toBeCloseTo(5.25, 0);
    expect(newest!.figures.map(({ figure }) => figure)).toEqual(
      expect.arrayContaining(['Cultivar: F', 'Cultivar: p']),
    );
    expect(levelOfChange(newest!.changes)).toBe('minor');
    expect(first).toMatchObject({ since: null, changes: [], figures: [], reason: null });
  });

  it('show the query on the total of T2 as resolved by 1.1.0', async () => {
    const [resolved, ...others] = resolvedQueries(await demo());
    expect(resolved).toMatchObject({ last: '1.0.0', resolvedIn: '1.1.0', orBefore: false });
    expect(resolved!.query.problem).toMatchObject({ rule: 'container-total', where: 'T2' });
    expect(resolved!.query.reason).toMatch(/^The plants' weights/);
    expect(others).toEqual([]);
  });
});

describe('changedCells', () => {
  it('names a weight that became unknown, and the status that says so', () => {
    expect(changedCells(trialWith(131), trialWith(null))).toEqual([
      { file: 'harvest.csv', row: 'T1 1 1', column: 'status', before: 'weighed', after: 'not weighed' },
      { file: 'harvest.csv', row: 'T1 1 1', column: 'fresh_weight', before: '131', after: null },
    ]);
  });

  it('finds nothing where only the order of entries, the version or its releases differ', () => {
    const people = [
      { name: 'Imke Farrant', part: 'grower' as const },
      { name: 'Tam Brackwell', part: 'recorder' as const },
    ] as const;
    const before = trialWith(131, { people: [people[0], people[1]] });
    const after = trialWith(131, {
      people: [people[1], people[0]],
      version: '1.0.1',
      releases: releases('1.0.1'),
    });
    expect(changedCells(before, after)).toEqual([]);
  });

  it('tells two entries of one name apart', () => {
    const event = (what: string) => ({ date: '2025-10-02', what });
    const before = trialWith(131, { events: [event('slugs'), event('hail')] });
    const after = trialWith(131, { events: [event('slugs'), event('rain')] });
    expect(changedCells(before, after)).toEqual([
      { file: 'trial.yaml', row: 'events 2025-10-02 (2)', column: 'what', before: 'hail', after: 'rain' },
    ]);
  });
});

describe('levelOfChange', () => {
  const change = (file: string, row: string, column: string) =>
    levelOfChange([{ file, row, column, before: '1', after: '2' }]);

  it.each([
    ['major', 'trial.yaml', 'variables fresh_weight', 'unit'],
    ['major', 'trial.yaml', 'factors cultivar levels slate-egret', 'id'],
    ['major', 'trial.yaml', 'design', 'allotted'],
    ['major', 'trial.yaml', 'containers T1', 'cover.unit'],
    ['major', 'trial.yaml', 'harvest', 'columns.fresh_weight.unit'],
    ['major', 'layout.csv', 'T1 1 1', 'cultivar'],
    ['minor', 'harvest.csv', 'T1 1 1', 'fresh_weight'],
    ['minor', 'harvest.csv', 'T1 1 1', 'status'],
    ['minor', 'readings.csv', 'T1, 2025-10-02', 'ec'],
    ['minor', 'trial.yaml', 'containers T2', 'weighed_total.value'],
    ['patch', 'harvest.csv', 'T1 1 1', 'remark'],
    ['patch', 'trial.yaml', 'title', ''],
    ['patch', 'trial.yaml', 'variables fresh_weight', 'highest'],
    ['patch', 'trial.yaml', 'variables fresh_weight', 'name'],
  ])('is %s for %s, %s, %s', (level, file, row, column) => {
    expect(change(file, row, column)).toBe(level);
  });

  it('is the gravest of several, and patch where no value changed', () => {
    const of = (column: string) => ({ file: 'trial.yaml', row: 'design', column, before: '1', after: '2' });
    expect(levelOfChange([of('seed'), of('allotted')])).toBe('major');
    expect(levelOfChange([])).toBe('patch');
  });
});

describe('versionSteps', () => {
  it('says which version was not frozen, and compares across it', () => {
    const trial: Trial = {
      ...trialWith(131, { version: '1.2.0', releases: releases('1.0.0', '1.1.0', '1.2.0') }),
      earlier: [{ version: '1.0.0', trial: trialWith(113) }],
    };
    const steps = versionSteps(trial, computeFindings(trial), []);
    expect(steps.map(({ since, reason }) => [since, reason])).toEqual([
      ['1.0.0', null],
      [null, 'Its files were not frozen, so that its changes are shown with those of the next.'],
      [null, null],
    ]);
    expect(steps[0]!.changes).toHaveLength(1);
  });

  it('says where a frozen version holds an error by the rules of today', () => {
    const trial: Trial = {
      ...trialWith(131, { version: '1.1.0', releases: releases('1.0.0', '1.1.0') }),
      earlier: [{ version: '1.0.0', trial: null }],
    };
    const reasons = versionSteps(trial, computeFindings(trial), []).map(({ reason }) => reason);
    expect(reasons).toEqual([
      'No version before it was frozen to compare it with.',
      'By the rules of today its files hold an error, so that they are not compared.',
    ]);
  });
});

describe('resolvedQueries', () => {
  const version = (number: string, queries: Query[]): Trial => ({
    ...trialWith(131, { version: number, releases: releases('1.0.0', '1.1.0', '1.2.0') }),
    queries,
  });

  it('gives the first version without the query, and leaves out what still stands', () => {
    const [total, range] = [query('container-total', 'T2'), query('outside-the-range', 'T1 1 1')];
    const earlier = [
      { version: '1.0.0', trial: version('1.0.0', [total, range]) },
      { version: '1.1.0', trial: version('1.1.0', [range]) },
    ];
    const resolved = resolvedQueries({ ...version('1.2.0', [range]), earlier });
    expect(resolved).toEqual([{ query: total, last: '1.0.0', resolvedIn: '1.1.0', orBefore: false }]);
  });

  it('says where a release between was not frozen', () => {
    const earlier = [{ version: '1.0.0', trial: version('1.0.0', [query('container-total', 'T2')]) }];
    expect(resolvedQueries({ ...version('1.2.0', []), earlier })).toMatchObject([
      { resolvedIn: '1.2.0', orBefore: true },
    ]);
  });
});
