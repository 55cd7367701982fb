import { say } from '../../model/say.ts';
import type { Findings, Summary, TreatmentDescription } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatBare } from '../format/format-quantity.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { type Measure, measureName } from './measures.ts';
import { noNumber, type PageTable } from './page-table.ts';
import { digitsFor, orNothing } from './treatment-summary.ts';

const five: readonly [string, (summary: Summary) => number | null][] = [
  ['Lowest', ({ minimum }) => minimum],
  ['Lower quartile', (summary) => summary.lower_quartile],
  ['Median', ({ median }) => median],
  ['Upper quartile', (summary) => summary.upper_quartile],
  ['Highest', ({ maximum }) => maximum],
];

/** The five-number summary of each treatment for one measure. */
export function treatmentSpreadTable(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
  descriptions: readonly TreatmentDescription[],
  measure: Measure,
): PageTable {
  const { name, unit } = findings.variable;
  const digits = digitsFor(
    trial,
    descriptions.flatMap((each) => each[measure] ?? []),
  );
  return {
    caption: say('{measured}: lowest, quartiles (type 7) and highest', {
      measured: `${name} ${measureName(measure)}`,
    }),
    columns: [
      { heading: say('Treatment'), numeric: false },
      ...five.map(([heading]) => ({ heading: say(heading), unit: unitInBoth(unit), numeric: true })),
    ],
    rows: descriptions.map((description) => ({
      heading: treatmentName(trial, description.treatment, names),
      cells: five.map(([, value]) => {
        const summary = description[measure];
        return summary === null
          ? noNumber
          : orNothing(value(summary), (number) => formatBare(number, unit, digits));
      }),
    })),
    notes: [],
  };
}
