import { describe, expect, it } from 'vitest';
import { planKept } from '../../../src/compute/planning/plan-kept.ts';
import type { Trial } from '../../../src/model/trial.ts';
import { trialOf } from '../../support/trial-of.ts';

const done = trialOf(
  ['wren', 'egret'].map((cultivar, index) => ({
    container: `T${index + 1}`,
    treatment: { cultivar },
    weight: 100,
  })),
);
const [T1, T2] = done.metadata.containers as [
  Trial['metadata']['containers'][0],
  (typeof done.metadata.containers)[0],
];

const withPlan = (plan: Partial<Trial['metadata']>): Trial => ({
  ...done,
  earlier: [
    {
      version: '0.1.0',
      trial: {
        ...done,
        metadata: { ...done.metadata, version: '0.1.0', status: 'planned', ...plan },
        harvest: [],
      },
    },
  ],
});

describe('planKept', () => {
  it('is null where no plan was frozen, and for the plan itself', () => {
    expect(planKept(done)).toBeNull();
    const trial = withPlan({});
    expect(planKept({ ...trial, metadata: { ...trial.metadata, status: 'planned' } })).toBeNull();
  });

  it('has no change where the plan was kept to, though weights and dates came in', () => {
    const { dates, ...undated } = done.metadata;
    expect(dates).toBeDefined();
    const trial = withPlan({});
    const plan = trial.earlier![0]!.trial!;
    const undatedPlan = { ...plan, metadata: { ...undated, status: 'planned' as const } };
    expect(planKept({ ...trial, earlier: [{ version: '0.1.0', trial: undatedPlan }] })).toEqual({
      version: '0.1.0',
      changes: [],
    });
  });

  it('names what was promised and done otherwise', () => {
    const changes = planKept(
      withPlan({ containers: [T1, { ...T2, rows: 5 }], question: 'Which is heavier?' }),
    );
    expect(changes?.changes).toEqual([
      {
        file: 'trial.yaml',
        row: 'question',
        column: '',
        before: 'Which is heavier?',
        after: done.metadata.question,
      },
      { file: 'trial.yaml', row: 'containers T2', column: 'rows', before: '5', after: '1' },
    ]);
  });

  it('says nothing of what no plan promises', () => {
    expect(planKept(withPlan({ title: 'Another title', licence: 'CC-BY-4.0' }))?.changes).toEqual([]);
  });
});
