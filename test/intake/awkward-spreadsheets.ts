/** Spreadsheets as growers keep them, and what comes of each. */
import { strToU8 } from 'fflate';
import type { Corrections } from '../../src/intake/corrections.ts';
import { moreAwkward } from './more-awkward-spreadsheets.ts';
import { odsFile, xlsxFile, type MadeSheet, type XlsxOptions } from '../support/spreadsheets.ts';

/** A spreadsheet, and the harvest.csv it becomes, or the reasons for which it is refused. */
export interface Awkward {
  title: string;
  /** Sheets to be written as a file of this kind, or the file's own bytes. */
  file: { kind: 'xlsx' | 'ods'; sheets: readonly MadeSheet[]; options?: XlsxOptions } | { text: Uint8Array };
  corrections?: Corrections;
  /** harvest.csv, line by line; absent where it is refused. */
  harvest?: readonly string[];
  /** The cells that are not used. */
  notUsed?: readonly string[];
  /** What else trial.yaml says afterwards. */
  trial?: string;
  /** Sentences that say what a reader should know of it. */
  remarks?: readonly string[];
  /** True where more reasons follow than are given. */
  isStart?: boolean;
  /** Parts of the reasons, one for each problem, in order. */
  refused?: readonly string[];
}

const headings = ['Tank', 'Row', 'Column', 'Weight (g)'];
/** T1 and T2 have 2 rows of 2 positions each. */
const places = [
  ['T1', 1, 1],
  ['T1', 1, 2],
  ['T1', 2, 1],
  ['T1', 2, 2],
  ['T2', 1, 1],
  ['T2', 1, 2],
  ['T2', 2, 1],
  ['T2', 2, 2],
] as const;
const weights = [182, 175.5, 169, 190, 177, 201, 166, 158];
const long = places.map((place, index) => [...place, weights[index]!]);
const plain = [
  'container,row,column,fresh_weight',
  'T1,1,1,182',
  'T1,1,2,175.5',
  'T1,2,1,169',
  'T1,2,2,190',
  'T2,1,1,177',
  'T2,1,2,201',
  'T2,2,1,166',
  'T2,2,2,158',
];
const both = (
  title: string,
  sheets: readonly MadeSheet[],
  more: Omit<Awkward, 'title' | 'file'>,
): Awkward[] =>
  (['xlsx', 'ods'] as const).map((kind) => ({
    title: `${title} (.${kind})`,
    file: { kind, sheets },
    ...more,
  }));

const utf16 = (text: string): Uint8Array => {
  const units = [0xfeff, ...Array.from({ length: text.length }, (_, index) => text.charCodeAt(index))];
  return new Uint8Array(units.flatMap((unit) => [unit & 255, unit >> 8]));
};
const latin1 = (text: string): Uint8Array => Uint8Array.from(text, (character) => character.charCodeAt(0));

export const awkward: readonly Awkward[] = [
  ...both(
    'headings below a title, in the middle of the sheet',
    [
      {
        name: 'Harvest',
        rows: [
          ['Autumn lettuces'],
          [],
          [null, null, ...headings],
          ...long.map((row) => [null, null, ...row]),
          [],
          [null, null, 'weighed with the kitchen scale'],
        ],
      },
    ],
    { harvest: plain, notUsed: ['Harvest!A1', 'Harvest!C13'] },
  ),
  ...both(
    'containers and remarks in joined cells',
    [
      {
        name: 'Harvest',
        rows: [
          [...headings, 'Notes'],
          ...long.map((row, index) => [
            index % 4 === 0 ? row[0]! : null,
            ...row.slice(1),
            index === 1 ? 'two slugs' : null,
          ]),
        ],
        joined: ['A2:A5', 'A6:A9', 'E3:E5'],
      },
    ],
    {
      harvest: [
        'container,row,column,fresh_weight,remark',
        'T1,1,1,182,',
        'T1,1,2,175.5,two slugs',
        'T1,2,1,169,two slugs',
        'T1,2,2,190,two slugs',
        'T2,1,1,177,',
        'T2,1,2,201,',
        'T2,2,1,166,',
        'T2,2,2,158,',
      ],
      notUsed: [],
    },
  ),
  {
    title: 'containers written once and left empty beneath',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [headings, ...long.map((row, index) => [index % 4 === 0 ? row[0]! : null, ...row.slice(1)])],
        },
      ],
    },
    harvest: plain,
    notUsed: [],
  },
  {
    title: 'a column for each plant under a joined heading',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'T1',
          rows: [
            ['Position', 'Weight in g, plant', null, 'Remarks'],
            [null, 1, 2, null],
            ['1-1', 92, 90, null],
            ['1-2', 88, null, 'one only'],
            ['2-1', 'dead', 61, null],
            ['2-2', 70, 71, null],
          ],
          joined: ['B1:C1'],
        },
      ],
    },
    harvest: [
      'container,row,column,plant,fresh_weight,status,remark',
      'T1,1,1,1,92,,',
      'T1,1,1,2,90,,',
      'T1,1,2,1,88,,one only',
      'T1,2,1,1,,dead,',
      'T1,2,1,2,61,,',
      'T1,2,2,1,70,,',
      'T1,2,2,2,71,,',
    ],
    notUsed: [],
  },
  {
    title: 'a column for each cut, headed by its day',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Basil',
          rows: [
            ['Tank', 'Row', 'Col', { date: '2025-10-20' }, { date: '2025-11-10' }],
            ['T1', 1, 1, 82, 47],
            ['T1', 1, 2, 80, 'no regrowth'],
          ],
        },
      ],
    },
    harvest: [
      'container,row,column,cut,fresh_weight,status',
      'T1,1,1,1,82,',
      'T1,1,1,2,47,',
      'T1,1,2,1,80,',
      'T1,1,2,2,,no regrowth',
    ],
    notUsed: [],
  },
  {
    title: 'tanks drawn as they stand, each under its name',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Weights',
          rows: [
            ['T1'],
            ['Row', 1, 2],
            [1, 182, 175.5],
            [2, 169, 190],
            [],
            ['T2'],
            ['Row', 1, 2],
            [1, 177, 201],
            [2, 166, 158],
          ],
        },
      ],
    },
    harvest: plain,
    notUsed: [],
  },
  {
    title: 'a sheet for each tank, and one that sums them up',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'T1',
          rows: [['row', 'column', 'fresh weight'], ...long.slice(0, 4).map((row) => row.slice(1))],
        },
        {
          name: 'Tank 2',
          rows: [['row', 'column', 'fresh weight'], ...long.slice(4).map((row) => row.slice(1))],
        },
        {
          name: 'Means',
          rows: [
            ['tank', 'weight'],
            ['T1', { formula: 'AVERAGE(T1!C2:C5)', value: 179.125 }],
          ],
        },
      ],
    },
    harvest: plain,
    notUsed: ['Means!A1', 'Means!B1', 'Means!A2', 'Means!B2'],
  },
  {
    title: 'ounces by the heading',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['Tank', 'Row', 'Col', 'Wt. oz'],
            ['T1', 1, 1, 6.5],
            ['T1', 1, 2, 6.25],
          ],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,6.5', 'T1,1,2,6.25'],
    trial: 'harvest: {columns: {fresh_weight: {column: fresh_weight, unit: oz}}}',
    notUsed: [],
  },
  {
    title: 'units typed into the cells, not all the same',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Harvest',
          rows: [headings, ['T1', 1, 1, '182 g'], ['T1', 1, 2, '0.1755kg'], ['T1', 2, 1, 169]],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,182', 'T1,1,2,175.5', 'T1,2,1,169'],
    notUsed: [],
  },
  {
    title: "a unit that only the cells' format shows",
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['Tank', 'Row', 'Col', 'Weight'],
            ['T1', 1, 1, { number: 6.5, behind: ' oz' }],
            ['T1', 1, 2, { number: 6, behind: ' oz' }],
          ],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,6.5', 'T1,1,2,6'],
    trial: 'unit: oz',
    notUsed: [],
  },
  {
    title: 'Spanish headings, semicolons, decimal commas, Windows-1252',
    file: {
      text: latin1(
        'Cosecha de oto\xf1o\r\n\r\nTanque;Fila;Columna;Peso (g);Observaciones\r\nT1;1;1;182,5;peque\xf1a\r\nT1;1;2;175;\r\n',
      ),
    },
    harvest: ['container,row,column,fresh_weight,remark', 'T1,1,1,182.5,pequeña', 'T1,1,2,175,'],
    notUsed: ['A1'],
  },
  {
    title: 'tabs and UTF-16, as a program saves "Unicode text"',
    file: { text: utf16('Tank\tRow\tColumn\tWeight\tRemark\nT1\t1\t1\t182\tnaïve\n') },
    harvest: ['container,row,column,fresh_weight,remark', 'T1,1,1,182,naïve'],
    notUsed: [],
  },
  {
    title: 'quotes, line breaks in cells and blank lines',
    file: {
      text: strToU8(
        'container,row,column,fresh_weight,remark\n\nT1,1,1,182,"first line\nsecond, line"\n\n"T1",1,2,"175.5",\n',
      ),
    },
    harvest: [
      'container,row,column,fresh_weight,remark',
      'T1,1,1,182,"first line second, line"',
      'T1,1,2,175.5,',
    ],
    notUsed: [],
  },
  {
    title: 'what became of plants in the place of their weight',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            headings,
            ['T1', 1, 1, 'died'],
            ['T1', 1, 2, 'Not weighed'],
            ['T1', 2, 1, 'culled'],
            ['T1', 2, 2, 190],
          ],
        },
      ],
      options: { inline: true },
    },
    harvest: [
      'container,row,column,fresh_weight,status',
      'T1,1,1,,dead',
      'T1,1,2,,not weighed',
      'T1,2,1,,culled',
      'T1,2,2,190,',
    ],
    notUsed: [],
  },
  {
    title: "a grower's own sign in the place of a weight, not explained",
    file: {
      kind: 'xlsx',
      sheets: [
        { name: 'Harvest', rows: [headings, ['T1', 1, 1, 'x'], ['T1', 1, 2, '-'], ['T1', 2, 1, 169]] },
      ],
    },
    refused: ['Harvest!D2: "x" is not a weight', 'Harvest!D3: "-" is not a weight'],
  },
  {
    title: "a grower's own sign in the place of a weight, explained",
    file: {
      kind: 'xlsx',
      sheets: [
        { name: 'Harvest', rows: [headings, ['T1', 1, 1, 'x'], ['T1', 1, 2, '-'], ['T1', 2, 1, 169]] },
      ],
    },
    corrections: { words: ['x=dead', '-=not weighed'] },
    harvest: [
      'container,row,column,fresh_weight,status',
      'T1,1,1,,dead',
      'T1,1,2,,not weighed',
      'T1,2,1,169,',
    ],
    trial: 'words: {x: dead, "-": not weighed}',
    notUsed: [],
  },
  {
    title: 'totals and means in between and at the end',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            headings,
            ...long.slice(0, 4),
            ['Total', null, null, { formula: 'SUM([.D2:.D5])', value: 716.5 }],
            ...long.slice(4),
            [null, null, null, { formula: 'SUM([.D7:.D10])', value: 702 }],
            ['Grand total', null, null, { formula: '[.D6]+[.D11]', value: 1418.5 }],
          ],
        },
      ],
    },
    harvest: plain,
    notUsed: ['Harvest!A6', 'Harvest!D6', 'Harvest!D11', 'Harvest!A12', 'Harvest!D12'],
  },
  {
    title: 'headings said again on the next page',
    file: {
      kind: 'xlsx',
      sheets: [{ name: 'Harvest', rows: [headings, ...long.slice(0, 4), [], headings, ...long.slice(4)] }],
    },
    harvest: plain,
    notUsed: [],
  },
  {
    title: 'a column for each plant and a row for each thing said',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: headings.map((heading, field) => [heading, ...long.map((row) => row[field]!)]),
        },
      ],
    },
    harvest: plain,
    notUsed: [],
  },
  {
    title: 'places in one cell, with the tank',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['Place', 'Weight'],
            ['T1 R1C1', 182],
            ['T1 R1C2', 175.5],
            ['T2 R2C1', 166],
          ],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,182', 'T1,1,2,175.5', 'T2,2,1,166'],
    notUsed: [],
  },
  {
    title: 'places by letter and number',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'T2',
          rows: [
            ['Position', 'Weight'],
            ['A1', 177],
            ['A2', 201],
            ['B1', 166],
            ['B2', 158],
          ],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', ...plain.slice(5)],
    notUsed: [],
  },
  {
    title: 'places numbered along the rows',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'T2',
          rows: [
            ['Plant', 'Weight'],
            [1, 177],
            [2, 201],
            [3, 166],
            [4, 158],
          ],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', ...plain.slice(5)],
    notUsed: [],
  },
  {
    title: 'places that the spreadsheet made dates of',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'T2',
          rows: [
            ['Position', 'Weight'],
            [{ date: '2025-01-01' }, 177],
            ['1-2', 201],
          ],
        },
      ],
    },
    refused: ['T2!A2: the spreadsheet has made a date of a place'],
  },
  ...both(
    'days as dates',
    [
      {
        name: 'Harvest',
        rows: [
          [...headings, 'Date'],
          ['T1', 1, 1, 182, { date: '2025-10-20' }],
          ['T1', 1, 2, 175.5, { date: '2025-10-21' }],
        ],
      },
    ],
    {
      harvest: ['container,row,column,date,fresh_weight', 'T1,1,1,2025-10-20,182', 'T1,1,2,2025-10-21,175.5'],
      notUsed: [],
    },
  ),
  {
    title: 'days counted from 1904',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            [...headings, 'Date'],
            ['T1', 1, 1, 182, { date: '2025-10-20' }],
          ],
        },
      ],
      options: { is1904: true },
    },
    harvest: ['container,row,column,cut,date,fresh_weight', 'T1,1,1,1,2025-10-20,182'],
    notUsed: [],
  },
  {
    title: 'days as text with the day first, which one of them tells',
    file: { text: strToU8('tank,row,column,weight,date\nT1,1,1,182,05/10/2025\nT1,1,2,175.5,20/10/2025\n') },
    harvest: ['container,row,column,date,fresh_weight', 'T1,1,1,2025-10-05,182', 'T1,1,2,2025-10-20,175.5'],
    trial: 'dates: day first',
    notUsed: [],
  },
  {
    title: 'days as text that can be read in two ways',
    file: { text: strToU8('tank,row,column,weight,date\nT1,1,1,182,05/10/2025\n') },
    refused: ['E2: "05/10/2025" can be read in two ways'],
  },
  {
    title: 'a weight in a joined cell beside two plants',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [headings, ['T1', 1, 1, 357.5], ['T1', 1, 2, null], ['T1', 2, 1, 169]],
          joined: ['D2:D3'],
        },
      ],
    },
    refused: ['Harvest!D2: "357.5" stands in a joined cell beside several plants'],
  },
  {
    title: 'the same place twice',
    file: {
      kind: 'ods',
      sheets: [
        { name: 'Harvest', rows: [headings, ['T1', 1, 1, 182], ['T1', 1, 2, 175.5], ['T1', 1, 1, 169]] },
      ],
    },
    refused: ['Harvest!D4: T1 1 1 stands here a second time; the first is Harvest!D2'],
  },
  {
    title: 'two columns of weights that nothing tells apart',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            [...headings, 'Weight'],
            ['T1', 1, 1, 182, 90],
          ],
        },
      ],
    },
    refused: ['Harvest!E1: D and E are both taken for fresh_weight in g; say which is of what'],
  },
  {
    title: 'the fault of a formula',
    file: {
      kind: 'xlsx',
      sheets: [
        { name: 'Harvest', rows: [headings, ['T1', 1, 1, { fault: '#DIV/0!' }], ['T1', 1, 2, 175.5]] },
      ],
    },
    refused: ['Harvest!D2: "#DIV/0!" is the fault of a formula'],
  },
  {
    title: 'a weight below zero, one with a comma, and one that became a date',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            headings,
            ['T1', 1, 1, -182],
            ['T1', 1, 2, '175,5'],
            ['T1', 2, 1, { date: '2025-12-05' }],
            ['T1', 2, 2, '190.5'],
          ],
        },
      ],
    },
    refused: [
      'Harvest!D2: "-182" is below zero',
      'Harvest!D3: "175,5" has a comma where the decimal mark is a point',
      'Harvest!D4: the spreadsheet has made a date of what was typed',
    ],
  },
  {
    title: 'a weight without its place',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Harvest',
          rows: [headings, ['T1', 1, 1, 182], [null, null, null, 175.5], ['T1', 2, 1, 169]],
        },
      ],
    },
    refused: ['Harvest!D3: this row has something of a plant and not its container, row, column'],
  },
  {
    title: 'cultivars that contradict the layout, or that nobody knows',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            [...headings, 'Variety'],
            ['T1', 1, 1, 182, 'Cobalt Wren'],
            ['T1', 1, 2, 175.5, 'Cobalt Wran'],
          ],
        },
      ],
    },
    refused: ['Harvest!E3: "Cobalt Wran" is no level of cultivar in trial.yaml; did you mean Cobalt Wren?'],
  },
  {
    title: 'a cultivar where another was laid out',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            [...headings, 'Variety'],
            ['T1', 1, 1, 182, 'Cobalt Wren'],
            ['T1', 1, 2, 175.5, 'Cobalt Wren'],
          ],
        },
      ],
    },
    refused: ['Harvest!D3: "cobalt-wren" by the spreadsheet, and "slate-egret" by the layout of the trial'],
  },
  {
    title: 'a tank that the trial does not have',
    file: { kind: 'ods', sheets: [{ name: 'Harvest', rows: [headings, ['T7', 1, 1, 182]] }] },
    refused: ['Harvest!A2: "T7" is none of the containers of trial.yaml (T1, T2)'],
  },
  {
    title: 'notes fastened to cells, and unusual signs',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            [...headings, 'Remark'],
            ['T1', 1, 1, { text: '182', note: 'scale was wet' }, 'ok & <fine> "quoted"'],
            ['T1', 1, 2, '\u00a0175.5', '🌱'],
          ],
        },
      ],
    },
    harvest: [
      'container,row,column,fresh_weight,remark',
      'T1,1,1,182,"ok & <fine> ""quoted""; scale was wet"',
      'T1,1,2,175.5,🌱',
    ],
    notUsed: [],
  },
  {
    title: 'columns that the trial does not ask for',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['No.', ...headings, 'Weighed by', 'Price'],
            ['a', ...long[0]!, 'Imke', 2.5],
          ],
        },
      ],
    },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,182'],
    notUsed: ['Harvest!A1', 'Harvest!F1', 'Harvest!G1', 'Harvest!A2', 'Harvest!F2', 'Harvest!G2'],
  },
  {
    title: 'a column that is called what only its grower knows',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['Tank', 'Row', 'Col', 'Q'],
            ['T1', 1, 1, 6.5],
          ],
        },
      ],
    },
    corrections: { headings: '1', columns: ['D=fresh_weight in oz'] },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,6.5'],
    trial: 'unit: oz',
    notUsed: [],
  },
  {
    title: 'weights by cultivar without their places',
    file: {
      kind: 'xlsx',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['Cobalt Wren', 'Slate Egret'],
            [182, 175.5],
            [169, 190],
          ],
        },
      ],
    },
    refused: ['No table of harvested plants is found'],
  },
  {
    title: 'a table that names tanks and nothing closer',
    file: {
      kind: 'ods',
      sheets: [
        {
          name: 'Harvest',
          rows: [
            ['Tank', 'Weight'],
            ['T1', 182],
            ['T1', 175.5],
          ],
        },
      ],
    },
    refused: ['Harvest!A1: Nothing says the row, column of each plant'],
  },
  {
    title: 'a file locked with a password',
    file: { text: Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1) },
    refused: ['locked'],
  },
  {
    title: 'a zip that is no spreadsheet',
    file: { text: Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0) },
    refused: ['no spreadsheet'],
  },
  { title: 'an empty file', file: { text: new Uint8Array(0) }, refused: ['empty'] },
  ...moreAwkward,
  {
    title: 'a quotation mark never closed',
    file: { text: strToU8('tank,row,column,weight\nT1,1,1,"182\nT1,1,2,175.5\n') },
    refused: ['open quote'],
  },
];

/** The bytes of a case's file, and the names of the cells that were written into it (null for text). */
export function fileOf({ file }: Awkward): {
  name: string;
  bytes: Uint8Array;
  sheets: readonly MadeSheet[] | null;
} {
  if ('text' in file) return { name: 'weights.csv', bytes: file.text, sheets: null };
  const bytes =
    file.kind === 'xlsx' ? xlsxFile(file.sheets, file.options) : odsFile(file.sheets, file.options);
  return { name: `weights.${file.kind}`, bytes, sheets: file.sheets };
}
