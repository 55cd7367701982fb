import { describe, expect, it } from 'vitest';
import type { PlanFields } from '../../src/plan/plan-fields.ts';
import { readPlan } from '../../src/plan/read-plan.ts';
import type { PlanFacts } from '../../src/publish/plan-facts.ts';

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
  factors: [{ factor: 'Cultivar', levels: 'Cobalt Wren\nNewcomer No. 2\n', bound: '' }],
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
  grids: '',
  sizes: '',
  variation: '',
  records: [],
  tasters: '',
  unreplicated: false,
};

const faultsOf = (changed: Partial<PlanFields>) => {
  const read = readPlan({ ...fields, ...changed }, facts);
  return 'request' in read ? [] : read.map(({ field }) => field);
};
const requestOf = (changed: Partial<PlanFields>) => {
  const read = readPlan({ ...fields, ...changed }, facts);
  if (!('request' in read)) throw new Error(read.map(({ message }) => message).join(' '));
  return read.request;
};
const strength = { factor: 'Solution strength', levels: '0.5\n1', bound: 'container' };

describe('readPlan', () => {
  it('reads what the fields ask for', () => {
    expect(requestOf({})).toMatchObject({
      id: 'lettuce-spring-2027',
      title: 'Lettuce: cultivar, spring 2027',
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
    const read = requestOf({ factors: [{ ...strength, bound: '' }], hasCheck: false });
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
    expect(faultsOf({ factors: [{ factor: 'Cultivar', levels, bound: '' }] })).toEqual(['levels']);
  });

  it('takes several factors, each with the unit that it is bound to', () => {
    const [cultivar] = fields.factors;
    const none = { factor: ' ', levels: '', bound: '' };
    const request = requestOf({ factors: [cultivar!, none, strength] });
    expect(request.factors.map(({ id, check }) => [id, check])).toEqual([
      ['cultivar', 'cobalt-wren'],
      ['solution_strength', undefined],
    ]);
    expect(request.only).toEqual({ solution_strength: 'container' });
    expect(request.allot).toEqual(['position']);
    // Where nothing else is compared, what it is bound to is what is allotted.
    expect(requestOf({ factors: [strength] }).allot).toEqual(['container', 'position']);
  });

  it('names the field of the factor that is wrong', () => {
    const [cultivar] = fields.factors;
    expect(faultsOf({ factors: [cultivar!, { ...strength, levels: 'one' }] })).toEqual(['levels2']);
    expect(faultsOf({ factors: [cultivar!, { ...strength, factor: '' }] })).toEqual(['factor2']);
    expect(faultsOf({ factors: [cultivar!, strength, strength] })).toEqual(['factor3']);
  });

  it('takes containers of differing grids with their blocks, instead of those alike', () => {
    const grids = 'T1 3x4 north\nTank 2: 2 × 5 north\n\nlong-gutter 1x12 by the wall';
    expect(requestOf({ grids, containers: '', rows: 'x' }).containers).toEqual([
      { id: 'T1', rows: 3, columns: 4, block: 'north' },
      { id: 'Tank 2', rows: 2, columns: 5, block: 'north' },
      { id: 'long-gutter', rows: 1, columns: 12, block: 'by the wall' },
    ]);
  });

  it.each([
    ['no size', 'T1 north', '“T1 north” is not understood'],
    ['a size too large', 'T1 3x41', 'from 1 to 40'],
    ['a name that is none', '_ 3x4', '“_ 3x4” is not understood'],
    ['a name given twice', 'T1 3x4\nT1 3x4', '“T1” is named twice'],
    ['a block for some', 'T1 3x4 north\nT2 3x4', 'Some have a block and others none'],
  ])('refuses containers with %s', (_, grids, message) => {
    const read = readPlan({ ...fields, grids }, facts);
    expect('request' in read ? [] : read).toMatchObject([
      { field: 'grids', message: expect.stringContaining(message) as string },
    ]);
  });

  it('takes sizes of seedlings and a variation, with a point or a comma, and refuses others', () => {
    expect(requestOf({ sizes: '31 28,5\n30; 12, 9' }).sizes).toEqual([31, 28.5, 30, 12, 9]);
    expect(readPlan({ ...fields, variation: '12,5' }, facts)).toMatchObject({ variation: 12.5 });
    expect(readPlan(fields, facts)).toMatchObject({ variation: null });
    expect(faultsOf({ sizes: '31 large', variation: '0' })).toEqual(['sizes', 'variation']);
  });

  it('keeps a title and a folder’s name to what they may have', () => {
    const { title, id } = requestOf({ crop: 'Very long '.repeat(9).trim(), season: 'spring '.repeat(8) });
    expect(title.length).toBeLessThanOrEqual(200);
    expect(id).toMatch(/^[a-z0-9-]{3,64}$/);
  });

  it('takes what is recorded beside the weight, the weight first and a variable for each taster', () => {
    const { variables } = requestOf({
      records: ['taste', 'stage', 'leaves', 'bolted'],
      tasters: 'Imke, O ;',
    });
    expect(variables.map(({ id, kind, scale, judge }) => [id, kind, scale ?? judge])).toEqual([
      ['fresh_weight', 'measured', undefined],
      ['leaves', 'counted', undefined],
      ['taste_1', 'scored', 'Imke'],
      ['taste_2', 'scored', 'O'],
      ['stage', 'scored', 'BBCH'],
      ['bolted', 'scored', 'yes or no'],
    ]);
    expect(faultsOf({ records: ['taste'], tasters: ' , ' })).toEqual(['tasters']);
    expect(faultsOf({ records: [], tasters: '' })).toEqual([]);
  });
});
