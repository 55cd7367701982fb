import { showText } from '../../check/show-value.ts';
import { levelNames } from '../../compute/format/level-names.ts';
import { drawPositionMaps } from '../../draw/position-maps.ts';
import { say } from '../../model/say.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { namedFigures } from '../named-figures.ts';
import { refuseName, refuseNoValue } from '../refuse.ts';

export const positionMap: SheetComponent = {
  name: 'PositionMap',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'The map of a container, or of all, with what was cut at each position, turned the way the harvester stood.',
  attributes: [
    { name: 'container', meaning: 'One container by its id; all where it is left out.' },
    trialAttribute,
  ],
  example: ({ item }) => `<PositionMap container="${item.trial.metadata.containers[0]?.id ?? ''}" />`,
  resolve(asked) {
    const found = askedFindings(asked);
    if (found === null) return null;
    const { trial, findings } = found;
    const given = asked.attribute('container');
    const drawn = trial.metadata.containers.filter(({ id }) =>
      trial.positions.some(({ container }) => container === id),
    );
    const ids = drawn.map(({ id }) => id);
    if (given !== null && !ids.includes(given))
      return refuseName(
        asked,
        'container',
        say('the trial has no container {name}', { name: showText(given) }),
        given,
        ids,
      );
    const names = levelNames(trial, asked.library.cultivars);
    // One map for each container that was planted, in their order.
    const figures = drawPositionMaps(trial, findings, { names }).filter(
      (_, index) => given === null || ids[index] === given,
    );
    if (figures.length === 0)
      return refuseNoValue(asked, 'container', say('there is no map: nothing was weighed'));
    return [{ kind: 'figures', figures: namedFigures(asked, trial, figures) }];
  },
};
