import { say } from '../../model/say.ts';
import type { Trial } from '../../model/trial.ts';
import { type LevelNames, treatmentName } from '../format/level-names.ts';
import { noNumber, type PageTable, type Text } from '../tables/page-table.ts';
import { rectangleInBoth, volumeInBoth } from './quantities.ts';

type Container = Trial['metadata']['containers'][number];

/** The containers: what they are, their grid and landmarks, their cover and solution. */
export function containersTable(trial: Trial, names: LevelNames): PageTable {
  const { containers } = trial.metadata;
  const columns: { heading: string; shown: boolean; cell: (container: Container) => Text }[] = [
    { heading: say('Kind'), shown: true, cell: ({ kind }) => say(kind) },
    { heading: say('Rows × columns'), shown: true, cell: ({ rows, columns }) => `${rows} × ${columns}` },
    {
      heading: say('Beside row 1'),
      shown: containers.some((each) => each.row_1),
      cell: (each) => each.row_1 ?? noNumber,
    },
    {
      heading: say('Beside column 1'),
      shown: containers.some((each) => each.column_1),
      cell: (each) => each.column_1 ?? noNumber,
    },
    {
      heading: say('Block'),
      shown: containers.some((each) => each.block),
      cell: (each) => each.block ?? noNumber,
    },
    {
      heading: say('Treatment'),
      shown: containers.some((each) => each.treatment),
      cell: (each) => (each.treatment ? treatmentName(trial, each.treatment, names) : noNumber),
    },
    {
      heading: say('Cover'),
      shown: containers.some((each) => each.cover),
      cell: (each) => (each.cover ? rectangleInBoth(each.cover) : noNumber),
    },
    {
      heading: say('Inside'),
      shown: containers.some((each) => each.inside),
      cell: (each) => (each.inside ? rectangleInBoth(each.inside) : noNumber),
    },
    {
      heading: say('Solution'),
      shown: containers.some((each) => each.volume),
      cell: (each) => (each.volume ? volumeInBoth(each.volume) : noNumber),
    },
  ];
  const shown = columns.filter((column) => column.shown);
  return {
    caption: say('The containers'),
    columns: [
      { heading: say('Container'), numeric: false },
      ...shown.map(({ heading }) => ({ heading, numeric: false })),
    ],
    rows: containers.map((container) => ({
      heading: container.id,
      cells: shown.map(({ cell }) => cell(container)),
    })),
    notes: [],
  };
}
