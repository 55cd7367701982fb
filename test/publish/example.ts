/**
 * Two invented trials to publish: one that says everything that a trial can say, with text that tries to do
 * harm, and one that says no more than it must. Harvest rows stand here as written, so that tests compare
 * what is published with what was typed.
 */
import { computeFindings } from '../../src/compute/findings.ts';
import type { Library, TrialWithFindings } from '../../src/model/library.ts';
import type {
  Container,
  HarvestRecord,
  Position,
  Status,
  Trial,
  TrialMetadata,
} from '../../src/model/trial.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

export const text = (file: { bytes: Uint8Array } | undefined): string =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(file?.bytes);

/** Remarks that a spreadsheet, a CSV reader or a markup reader might trip over. */
export const remarks = [
  '=HYPERLINK("http://example.org/?"&A1,"see")',
  '+1+cmd|calc',
  '-2+3',
  '@SUM(A1)',
  '\tindented',
  `'=quoted already`,
  'ok;=1+1',
  'two\nlines, a comma and a "quote"',
  '＝１＋１',
  '-5',
  'plain; -5 degrees at night',
  'naïve 蕪 & <b>bold</b>',
];

const tank = (id: string, block: string, strength: string): Container => ({
  id,
  kind: 'tank',
  rows: 1,
  columns: 2,
  row_1: 'wall side',
  column_1: 'north',
  block,
  cover: { length: 120, width: 60, unit: 'cm' },
  inside: { length: 117, width: 57, unit: 'cm' },
  volume: { value: 70, unit: 'L' },
  ...(id === 'T2' ? { weighed_total: { value: 30, unit: 'oz' } } : {}),
  treatment: { strength },
});

/** Of people who let their e-mail be published, and of people who do not. */
export const publicEmail = { email: 'orla@fernhollow.example.org', email_public: true };
export const privateEmails = [
  'tam@private.example.org',
  'ysolde@private.example.org',
  'old@private.example.org',
] as const;

/** As it was frozen when other people, and a comment, gave other addresses. */
const frozenYaml = `version: 1.0.0
# ask ${privateEmails[2]}
people: [{name: Tam, part: recorder, email: ${privateEmails[0]}}, {name: Orla, part: grower, email: ${publicEmail.email}, email_public: true}]
`;

const fullMetadata: TrialMetadata = {
  title: 'Every field: "quoted" & <marked> {braced} 100% of café_leaves #1',
  version: '1.2.0',
  status: 'finished',
  question: 'Does a trial that says everything come out whole?',
  summary:
    'An invented trial that uses every optional field, so that each published file can be held against its standard. Nothing in it was ever measured.',
  crop: { name: 'Lettuce', species: 'Lactuca sativa', taxon: 'NCBITaxon:4236' },
  season: { year: 2025, name: 'autumn' },
  dates: {
    sown: '2025-08-25',
    germinated: '2025-08-29',
    transplanted: '2025-09-12',
    cuts: ['2025-10-20', '2025-11-10'],
  },
  site: {
    name: 'Fernhollow',
    country: 'IE',
    region: 'west coast',
    latitude: 52.9,
    longitude: -9.1,
    elevation_m: 40,
    setting: 'rain shelter',
  },
  people: [
    { name: 'Orla van der Fennimoor', part: 'grower', orcid: '0000-0002-1825-0097', ...publicEmail },
    { name: 'Orla van der Fennimoor', part: 'author' },
    { name: 'Brackwell, Tam', part: 'recorder', email: privateEmails[0], email_public: false },
    {
      name: 'Ysolde',
      part: 'contact',
      orcid: 'https://orcid.org/0000-0001-5109-3700',
      email: privateEmails[1],
    },
  ],
  licence: 'CC-BY-4.0',
  factors: [
    {
      id: 'cultivar',
      name: 'Cultivar',
      kind: 'cultivar',
      levels: [{ id: 'cobalt-wren' }, { id: '=2', name: 'Own seed', note: 'Saved at home.' }],
      check: 'cobalt-wren',
    },
    { id: 'strength', name: 'Solution strength', levels: [{ id: '0.5', name: 'Half' }, { id: '1' }] },
  ],
  design: {
    arrangement: 'split plot',
    allotted: 'position',
    randomised: true,
    seed: 8812,
    lot: { method: 'lots-1' },
  },
  containers: [tank('T1', '1', '0.5'), tank('T2', '1', '1'), tank('T3', '2', '0.5'), tank('T4', '2', '1')],
  variables: [
    {
      id: 'fresh_weight',
      name: 'Fresh weight',
      of: 'plant',
      kind: 'measured',
      unit: 'oz',
      resolution: 0.1,
      lowest: 0.1,
      highest: 20,
      trait: 'TO:0000442',
      note: 'Cut at the collar.',
    },
    { id: 'leaves', name: 'Leaves', of: 'plant', kind: 'counted' },
    { id: 'height', name: 'Height', of: 'plant', kind: 'measured', unit: 'cm', resolution: 0.5 },
  ],
  nutrients: {
    water: { Ca: 20 },
    salts: [
      { name: 'Calcium nitrate', grams_per_litre: 0.66, percent: { N: 15.5, Ca: 19 }, stock: 'A' },
      { name: 'Epsom salt', grams_per_litre: 0.4, formula: 'MgSO4.7H2O', stock: 'B' },
    ],
    stock_ratio: 100,
  },
  events: [
    { date: '2025-10-02', where: 'T1 1 2', what: 'tip burn\ton the outer leaves' },
    { date: '2025-10-05', what: '=watered' },
  ],
  photos: [
    {
      file: 'photos/day-30.jpg',
      date: '2025-10-12',
      where: 'T1 1 2',
      caption: 'Day 30.',
      alt: 'Two rows of lettuces.',
    },
  ],
  related: [
    { kind: 'doi', value: 'https://doi.org/10.5555/12345678', of: 'this' },
    { kind: 'doi', value: '10.5555/87654321', note: 'The method we followed.' },
    { kind: 'url', value: 'https://example.org/notes', note: 'Notes.' },
    { kind: 'orcid', value: '0000-0002-1825-0097' },
  ],
  accepted: [{ rule: 'container-total', where: 'T2', reason: 'The crate was weighed wet.' }],
  sources: [
    {
      file: 'source/weights & <notes>.xlsx',
      sha256: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
      sheet: 'Harvest',
      turned: true,
      headings: 'A-B',
      rows: 'C-N',
      left_out: ['G'],
      columns: { '1': 'container, carried down', '4': 'fresh_weight in oz, plant 1' },
      always: { container: 'T1', row: '1', column: '1', plant: '1', cut: '1', date: '2025-10-20' },
      titles: true,
      words: { x: 'dead' },
      decimal: ',',
      dates: 'day first',
    },
  ],
  releases: [
    { version: '1.0.0', date: '2025-11-12', note: 'First release.' },
    { version: '1.2.0', date: '2025-12-01', note: 'Remarks <added> & read again.' },
  ],
};

/** Each row as typed: container, column, cut, plant, ounces, leaves, centimetres, status, pot total in ounces, remark. */
type Typed = readonly [
  string,
  number,
  number,
  number | null,
  number | null,
  number | null,
  number | null,
  Status,
  number | null,
  string,
];

const fullHarvest: readonly Typed[] = ['T1', 'T2', 'T3', 'T4'].flatMap((container, tank): Typed[] =>
  [1, 2].flatMap((cut): Typed[] => [
    [
      container,
      1,
      cut,
      1,
      4.1 + tank + 0.3 * cut,
      9 + tank,
      12.5,
      'weighed',
      null,
      remarks[tank * 4 + cut] ?? '',
    ],
    [
      container,
      1,
      cut,
      2,
      null,
      8,
      null,
      'not weighed',
      tank === 0 ? 9.7 : null,
      remarks[tank * 4 + cut + 2] ?? '',
    ],
    tank === 3 && cut === 2
      ? [container, 2, cut, 1, null, null, null, 'no regrowth', null, '']
      : [
          container,
          2,
          cut,
          1,
          5.3 + 0.7 * tank - 0.1 * cut,
          11,
          13,
          'weighed',
          null,
          remarks[tank + cut - 2] ?? '',
        ],
  ]),
);

const ounce = 28.349523125;
const grams = (ounces: number | null): number | null => (ounces === null ? null : ounces * ounce);
const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

function fullTrial(): Trial {
  const positions = ['T1', 'T2', 'T3', 'T4'].flatMap((container, tank): Position[] =>
    [1, 2].map((column) => ({
      container,
      row: 1,
      column,
      treatment: { cultivar: column === 1 ? 'cobalt-wren' : '=2', strength: tank % 2 === 0 ? '0.5' : '1' },
      block: tank < 2 ? '1' : '2',
      plot: `${container}-${String(column)}`,
      plants: column === 1 ? 2 : 1,
      line: 2 * tank + column + 1,
    })),
  );
  const harvest = fullHarvest.map(
    (
      [container, column, cut, plant, ounces, leaves, height, status, total, remark],
      index,
    ): HarvestRecord => ({
      container,
      row: 1,
      column,
      cut,
      date: fullMetadata.dates?.cuts?.[cut - 1] ?? null,
      plant,
      status,
      values: { fresh_weight: grams(ounces), leaves, height },
      potTotal: grams(total),
      remark,
      line: index + 2,
    }),
  );
  const typed = fullHarvest.map(
    ([container, column, cut, plant, ounces, leaves, height, status, total, remark]) =>
      [container, 1, column, cut, plant, ounces, leaves, height, status === 'weighed' ? '' : status, total]
        .map((cell) => String(cell ?? ''))
        .concat(quoted(remark))
        .join(','),
  );
  const planted = positions.map((at) =>
    [
      at.container,
      at.row,
      at.column,
      at.treatment['cultivar'],
      at.treatment['strength'],
      at.block,
      at.plot,
      at.plants,
    ].join(','),
  );
  return {
    id: 'every-field-2025',
    metadata: fullMetadata,
    positions,
    harvest,
    readings: [],
    queries: [],
    files: new Map([
      [
        'harvest.csv',
        bytes(
          `\uFEFFcontainer,row,column,cut,plant,fresh_weight,leaves,height,status,pot_total,remark\r\n${typed.join('\r\n')}\r\n`,
        ),
      ],
      [
        'layout.csv',
        bytes(`container,row,column,cultivar,strength,block,plot,plants\n${planted.join('\n')}\n`),
      ],
      ['readings.csv', bytes('date,container,level,ph\n2025-09-20,T1,9.5,6.1\n2025-09-20,T2,9.4,\n')],
      ['versions/1.0.0/trial.yaml', bytes(frozenYaml)],
      ['versions/1.0.0/harvest.csv', bytes('container,row,column,fresh_weight\n')],
    ]),
  };
}

/** The bare trial of one cultivar with all that can be said of scores, which the other has none of. */
function scoredTrial(): Trial {
  const scores = [
    { mildew: 0, bolted: 0 },
    { mildew: 2, bolted: 1 },
    { mildew: null, bolted: 0 },
  ];
  const { metadata, harvest, files, ...rest } = bareTrial();
  const typed = harvest.map(({ row, column, values }, at) =>
    ['B1', row, column, values['fresh_weight'], scores[at]!.mildew ?? '', scores[at]!.bolted].join(','),
  );
  return {
    ...rest,
    id: 'scores-2024',
    metadata: {
      ...metadata,
      crop: { name: 'Basil', cultivar: 'Own seed' },
      variables: [
        ...metadata.variables,
        {
          id: 'mildew',
          name: 'Mildew',
          of: 'pot',
          kind: 'scored',
          marks: { '0': 'none', '1': 'a leaf or two', '2': '=half, "the leaves"' },
          panel: 'Leaves',
          judge: 'A',
          blind: true,
        },
        { id: 'bolted', name: 'Bolted', of: 'pot', kind: 'scored', scale: 'yes or no' },
      ],
    },
    harvest: harvest.map((record, at) => ({ ...record, values: { ...record.values, ...scores[at]! } })),
    files: new Map([
      ...files,
      ['harvest.csv', bytes(`container,row,column,fresh_weight,mildew,bolted\n${typed.join('\n')}\n`)],
    ]),
  };
}

function bareTrial(): Trial {
  const weights = [120, 135, 0.1 + 0.2];
  return {
    id: 'no-option-2024',
    metadata: {
      title: 'One tray',
      version: '1.0.0',
      status: 'finished',
      question: 'How much a pot?',
      crop: { name: 'Basil' },
      season: { year: 2024, name: 'summer' },
      dates: { cuts: ['2024-07-01'] },
      site: { name: 'Yard', setting: 'open air' },
      people: [{ name: 'Tam Brackwell', part: 'recorder' }],
      licence: 'CC0-1.0',
      design: { arrangement: 'unreplicated', allotted: 'container', randomised: false },
      containers: [{ id: 'B1', kind: 'tray', rows: 1, columns: 3 }],
      variables: [{ id: 'fresh_weight', name: 'Fresh weight', of: 'pot', kind: 'measured', unit: 'g' }],
      releases: [{ version: '1.0.0', date: '2024-07-02' }],
    },
    positions: [1, 2, 3].map((column) => ({
      container: 'B1',
      row: 1,
      column,
      treatment: {},
      block: null,
      plot: null,
      plants: 1,
      line: null,
    })),
    harvest: weights.map((weight, index) => ({
      container: 'B1',
      row: 1,
      column: index + 1,
      cut: 1,
      date: '2024-07-01',
      plant: null,
      status: 'weighed',
      values: { fresh_weight: weight },
      potTotal: null,
      remark: '',
      line: index + 2,
    })),
    readings: [],
    queries: [],
    files: new Map([
      [
        'harvest.csv',
        bytes(
          `container,row,column,fresh_weight\n${weights.map((weight, index) => `B1,1,${String(index + 1)},${String(weight)}\n`).join('')}`,
        ),
      ],
    ]),
  };
}

const found = (trial: Trial): TrialWithFindings => ({ trial, findings: computeFindings(trial) });

export const full: TrialWithFindings = found(fullTrial());
export const bare: TrialWithFindings = found(bareTrial());
export const scored: TrialWithFindings = found(scoredTrial());

/** A trial that has no dataset yet. */
export const growing: TrialWithFindings = {
  trial: { ...bare.trial, id: 'still-growing', metadata: { ...bare.trial.metadata, status: 'growing' } },
  findings: null,
};

export const library: Library = {
  site: {
    title: 'Fernhollow growing trials',
    description: 'Small trials in still-water tanks.',
    url: 'https://fernhollow.example.org/trials',
    publisher: 'Fernhollow garden',
    licence: 'CC-BY-4.0',
    language: 'en',
    units: 'metric',
  },
  cultivars: [{ id: 'cobalt-wren', name: 'Cobalt Wren', species: 'Lactuca sativa' }],
  trials: [full, bare, growing],
  problems: [],
};

/** A site that says no more than it must. */
export const bareLibrary: Library = {
  site: { title: 'Yard', url: 'https://example.org/', publisher: 'Yard', licence: 'CC0-1.0' },
  cultivars: [],
  trials: [bare],
  problems: [],
};

const otterbrook = 'https://otterbrook.example.org/';

/** A site that compares its trials with one of another site, whose id is one of its own. */
export const withGathered: Library = {
  ...library,
  gathered: [
    found({
      ...bareTrial(),
      id: 'otterbrook-example-org/no-option-2024',
      cultivarsThere: [],
      origin: {
        folder: 'otterbrook-example-org',
        title: 'Otterbrook',
        address: otterbrook,
        id: 'no-option-2024',
        page: `${otterbrook}trials/no-option-2024/`,
        data: `${otterbrook}data/no-option-2024/`,
        identifier: `${otterbrook}data/no-option-2024/`,
        gathered: '2026-11-25',
      },
    }),
  ],
};
