import { describe, expect, it } from 'vitest';
import { type PlanFields, readPlan } from '../../../src/components/plan/read-plan.ts';
import type { PlanFacts } from '../../../src/publish/plan-facts.ts';

const facts: PlanFacts = {
  cultivars: [{ id: 'cobalt-wren', name: 'Cobalt Wren' }],
  crops: [],
  otherwise: { percent: 15, from: 'an assumption' },
  site: null,
  licence: 'CC0-1.0',
};

const fields: PlanFields = {
  question: 'Does the newcomer match the check?',
  crop: 'Lettuce',
  season: 'spring',
  year: '2027',
  site: 'Fernhollow',
  setting: 'greenhouse',
  person: 'Imke Farrant',
  factor: 'Cultivar',
  levels: 'Cobalt Wren\nNewcomer No. 2\n',
  hasCheck: true,
  containers: '4',
  rows: '3',
  columns: '2',
  kind: 'tank',
  allot: ['position'],
  plotRows: '',
  plotColumns: '',
  border: '0',
  seedlings: '',
  unreplicated: false,
};

const faultsOf = (changed: Partial<PlanFields>) => {
  const read = readPlan({ ...fields, ...changed }, facts);
  return 'factors' in read ? [] : read.map(({ field }) => field);
};

describe('readPlan', () => {
  it('reads what the fields ask for', () => {
    expect(readPlan(fields, facts)).toMatchObject({
      id: 'lettuce-spring-2027',
      title: 'Does the newcomer match the check',
      season: { year: 2027, name: 'spring' },
      site: { name: 'Fernhollow', setting: 'greenhouse' },
      containers: [
        { id: 'T1', rows: 3, columns: 2 },
        { id: 'T2', rows: 3, columns: 2 },
        { id: 'T3', rows: 3, columns: 2 },
        { id: 'T4', rows: 3, columns: 2 },
      ],
      factors: [
        {
          id: 'cultivar',
          kind: 'cultivar',
          levels: [{ id: 'cobalt-wren' }, { id: 'newcomer-no-2', name: 'Newcomer No. 2' }],
          check: 'cobalt-wren',
        },
      ],
      allot: ['position'],
      seedlings: null,
    });
  });

  it('takes a factor of another kind with its levels as written', () => {
    const read = readPlan(
      { ...fields, factor: 'Solution strength', levels: '0.5\n1', hasCheck: false },
      facts,
    );
    expect(read).toMatchObject({
      factors: [{ id: 'solution_strength', name: 'Solution strength', levels: [{ id: '0.5' }, { id: '1' }] }],
    });
    expect(read).not.toHaveProperty('factors.0.kind');
    expect(read).not.toHaveProperty('factors.0.check');
  });

  it('names every field that is not understood, and nothing else', () => {
    expect(faultsOf({})).toEqual([]);
    expect(faultsOf({ question: 'Why', year: '27', rows: '0', allot: [] }).sort()).toEqual([
      'allot',
      'question',
      'rows',
      'year',
    ]);
  });

  it('asks for the size of a plot only where plots can be allotted', () => {
    expect(faultsOf({ allot: ['position'] })).toEqual([]);
    expect(faultsOf({ allot: ['plot'] })).toEqual(['plotRows', 'plotColumns']);
  });

  it.each([
    ['one level', 'Cobalt Wren'],
    ['the same twice', 'Cobalt Wren\ncobalt wren'],
    ['a name without a letter', 'Cobalt Wren\n!!'],
  ])('refuses %s', (_, levels) => {
    expect(faultsOf({ levels })).toEqual(['levels']);
  });
});
