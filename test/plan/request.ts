/** A plan that tests start from and change. */
import type { PlanRequest } from '../../src/plan/plan-request.ts';

export const levels = (...ids: string[]): PlanRequest['factors'][number]['levels'] => {
  const [first, ...rest] = ids.map((id) => ({ id }));
  if (first === undefined) throw new Error('levels requires at least one');
  return [first, ...rest];
};

export const containers = (count: number, rows: number, columns: number, blocks?: number) =>
  Array.from({ length: count }, (_, index) => ({
    id: `T${index + 1}`,
    rows,
    columns,
    ...(blocks === undefined ? {} : { block: String((index % blocks) + 1) }),
  }));

export function planOf(change: Partial<PlanRequest> = {}): PlanRequest {
  return {
    id: 'planned-trial',
    title: 'A trial that is planned',
    question: 'Which of these does best here?',
    crop: { name: 'Lettuce' },
    season: { year: 2027, name: 'spring' },
    site: { name: 'Fernhollow', setting: 'rain shelter' },
    people: [{ name: 'Imke Farrant', part: 'grower' }],
    licence: 'CC0-1.0',
    factors: [{ id: 'feed', name: 'Feed', levels: levels('one', 'two', 'three') }],
    containers: containers(4, 3, 4),
    kind: 'tank',
    allot: ['position'],
    only: {},
    border: 0,
    seedlings: null,
    sizes: null,
    unreplicated: false,
    variables: [
      { id: 'fresh_weight', name: 'Fresh weight', of: 'plant', kind: 'measured', unit: 'g', resolution: 1 },
    ],
    ...change,
  };
}
