import { say } from '../../model/say.ts';
import type { PositionEffects } from '../../model/findings.ts';
import type { Container, Position } from '../../model/trial.ts';
import { meanOf } from '../../statistics/mean.ts';
import type { PotsOfContainer } from './pots-of-container.ts';

type MeanOfSide = PositionEffects['edge'];

/** The plain mean of the pots that a test lets in. */
function meanWhere({ pots }: PotsOfContainer, within: (position: Position) => boolean): MeanOfSide {
  const values = pots.filter(({ position }) => within(position)).map(({ value }) => value);
  return values.length === 0
    ? { mean: null, n: 0, reason: say('No pot there has a known weight.') }
    : { mean: meanOf(values), n: values.length };
}

/** Plain means of the pots on the edge of the grid and of those that are not. */
export function edgeAndInterior(ofContainer: PotsOfContainer): { edge: MeanOfSide; interior: MeanOfSide } {
  const onEdge = ({ row, column }: Position) =>
    row === 1 ||
    column === 1 ||
    row === ofContainer.container.rows ||
    column === ofContainer.container.columns;
  return {
    edge: meanWhere(ofContainer, onEdge),
    interior: meanWhere(ofContainer, (position) => !onEdge(position)),
  };
}

/**
 * Plain means of the halves of the grid, named by the landmark beside them. A middle row or column belongs
 * to neither half.
 */
export function halves(ofContainer: PotsOfContainer): PositionEffects['halves'] {
  const { container } = ofContainer;
  return [
    ...halvesAlong(ofContainer, container.rows, 'row', landmark(container, 'row')),
    ...halvesAlong(ofContainer, container.columns, 'column', landmark(container, 'column')),
  ];
}

function landmark(container: Container, along: 'row' | 'column'): string | undefined {
  return along === 'row' ? container.row_1 : container.column_1;
}

function halvesAlong(
  ofContainer: PotsOfContainer,
  count: number,
  along: 'row' | 'column',
  near: string | undefined,
): PositionEffects['halves'] {
  if (count < 2) return [];
  const half = Math.floor(count / 2);
  const far = near === undefined ? say(`last ${along}`) : say('opposite {landmark}', { landmark: near });
  const side = (name: string, within: (at: number) => boolean) => {
    const { mean, n } = meanWhere(ofContainer, (position) => within(position[along]));
    return { side: name, mean, n };
  };
  return [side(near ?? `${say(along)} 1`, (at) => at <= half), side(far, (at) => at > count - half)];
}
