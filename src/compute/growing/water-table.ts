import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatBare } from '../format/format-quantity.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { distinct, type PageTable, type Text } from '../tables/page-table.ts';
import { orNothing } from '../tables/treatment-summary.ts';

/**
 * Water used by each container, what is left of it and whether its first fill would have lasted; null where
 * nothing was read. Numbers carry the uncertainty of the readings beside them.
 */
export function waterTable(trial: Trial, water: Findings['water']): PageTable | null {
  if (water.length === 0) return null;
  const quantity = (unit: string, digits: number, value: number | null | undefined): Text =>
    orNothing(value ?? null, (number) => formatBare(number, unit, digits));
  const finished = trial.metadata.status === 'finished';
  return {
    caption: say('Water used: {method}', {
      method: distinct(water.map(({ method }) => say(method))).join('; '),
    }),
    columns: [
      { heading: say('Container'), numeric: false },
      { heading: say('Water used'), unit: unitInBoth('L'), numeric: true },
      { heading: say('Uncertain by'), unit: unitInBoth('L'), numeric: true },
      ...(finished
        ? [{ heading: say('For its whole fresh weight'), unit: unitInBoth('L/kg'), numeric: true }]
        : []),
      { heading: say('For each plant set and day'), unit: unitInBoth('L'), numeric: true },
      { heading: say('Left at the last reading'), unit: unitInBoth('L'), numeric: true },
      {
        heading: finished ? say('Would the first fill have lasted?') : say('Will the first fill last?'),
        numeric: false,
      },
    ],
    rows: water.map((each) => ({
      heading: each.container,
      cells: [
        quantity('L', 1, each.used_L),
        quantity('L', 1, each.uncertainty_L),
        ...(finished ? [quantity('L/kg', 1, each.L_per_kg)] : []),
        quantity('L', 3, each.L_per_plant_day),
        quantity('L', 1, each.left_L),
        lastsInWords(each.fill_lasts),
      ],
    })),
    notes: distinct([
      say(
        'Each level is read to about 2 mm. What evaporated beside the plants is counted with what went through them.',
      ),
      sharedNote(trial),
      ...water.flatMap(({ container, reason }) => (reason ? [`${container}: ${reason}`] : [])),
    ]),
  };
}

function lastsInWords(lasts: boolean | null | undefined): string {
  if (lasts === null || lasts === undefined) return say('cannot be told');
  return lasts ? say('yes') : say('no');
}

/** Said where several treatments drew on one container: nothing tells their shares apart. */
function sharedNote(trial: Trial): string {
  const treatments = Map.groupBy(trial.positions, ({ container }) => container);
  const shared = [...treatments.values()].some(
    (positions) => new Set(positions.map(({ treatment }) => JSON.stringify(treatment))).size > 1,
  );
  return shared
    ? say('Plants of several treatments drew on the same water, so it is not split between treatments.')
    : '';
}
