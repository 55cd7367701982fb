import type { Findings } from '../../model/findings.ts';
import { say } from '../../model/say.ts';
import type { Fact } from './fact.ts';

/** Means of edges, insides and halves of the containers, how they differ, and the slopes along rows and columns. */
export function placeFacts({ position }: Findings): Fact[] {
  return position.flatMap(({ container, measure, rows, columns, edge, interior, halves }) => {
    const fact = (what: () => string, value: number | null): Fact[] =>
      value === null
        ? []
        : [
            {
              value,
              dimension: 'g',
              kind: 'place',
              words: () => say('{what} in {container}', { what: what(), container }),
              treatments: [],
              measure,
              component: null,
            },
          ];
    const difference = edge.mean === null || interior.mean === null ? null : edge.mean - interior.mean;
    const sides = halves.flatMap(({ side, mean }, index) => {
      const other = halves[index % 2 === 0 ? index + 1 : index - 1];
      const apart = mean === null || (other?.mean ?? null) === null ? null : mean - other!.mean!;
      return [
        ...fact(() => say('the mean of the half by the {side}', { side }), mean),
        ...fact(() => say('the difference between the half by the {side} and the other', { side }), apart),
      ];
    });
    return [
      ...fact(() => say('the mean of the edge'), edge.mean),
      ...fact(() => say('the mean of the inside'), interior.mean),
      ...fact(() => say('the difference between edge and inside'), difference),
      ...fact(() => say('the slope along the rows'), rows.slope),
      ...fact(() => say('the slope along the columns'), columns.slope),
      ...sides,
    ];
  });
}
