import type { Container, Position, Trial } from '../../model/trial.ts';
import type { Yields } from '../yields.ts';

/** A container's pots of known weight, over all cuts. */
export interface PotsOfContainer {
  container: Container;
  pots: readonly { position: Position; value: number }[];
}

/** The pots of each container whose weight is known. */
export function potsOfContainers(trial: Trial, yields: Yields): PotsOfContainer[] {
  const byContainer = Map.groupBy(yields.pots, ({ position }) => position.container);
  return trial.metadata.containers.map((container) => ({
    container,
    pots: (byContainer.get(container.id) ?? []).flatMap(({ position, pot }) =>
      pot.value === null ? [] : [{ position, value: pot.value }],
    ),
  }));
}
