import { say } from '../../model/say.ts';
import type { TreatmentDescription } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatBare } from '../format/format-quantity.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { distinct, type PageTable, type TableCell, type Text } from './page-table.ts';
import { orNothing } from './treatment-summary.ts';

/** What was set of each treatment, and its yield by area and by time. */
export function treatmentYieldTable(
  trial: Trial,
  names: LevelNames,
  descriptions: readonly TreatmentDescription[],
  working: (row: number) => string,
): PageTable {
  const whole = (value: number | null) => orNothing(value, (number) => formatNumber(number, 0));
  return {
    caption: say('What was set, yield by the area of the cover, and days to the last cut'),
    columns: [
      { heading: say('Treatment'), numeric: false },
      { heading: say('Containers'), numeric: true },
      { heading: say('Pots'), numeric: true },
      { heading: say('Plants set'), numeric: true },
      { heading: say('Yield'), unit: unitInBoth('kg/m2'), numeric: true },
      { heading: say('Yield a day'), unit: unitInBoth('g/m2/day'), numeric: true },
      { heading: say('Days from sowing'), numeric: true },
      { heading: say('Days from transplanting'), numeric: true },
    ],
    rows: descriptions.map((each, row) => ({
      heading: treatmentName(trial, each.treatment, names),
      cells: [
        whole(each.containers),
        whole(each.pots),
        whole(each.plants),
        linked(
          orNothing(each.kg_per_m2, (number) => formatBare(number, 'kg/m2', 2)),
          working(row),
        ),
        linked(
          orNothing(each.g_per_m2_day, (number) => formatBare(number, 'g/m2/day', 1)),
          working(row),
        ),
        whole(each.days_from_sowing),
        whole(each.days_from_transplanting),
      ],
    })),
    notes: distinct(descriptions.map(({ reason }) => reason)),
  };
}

function linked(text: Text, working: string): Text | TableCell {
  return typeof text === 'string' ? text : { text, working };
}
