/** More spreadsheets as growers keep them: as other programs write them, and with what lies hidden in them. */
import { utils, write, type BookType } from '@e965/xlsx';
import { strToU8 } from 'fflate';
import type { Edit, MadeCell } from '../support/spreadsheets.ts';
import type { Awkward } from './awkward-spreadsheets.ts';

const headings = ['Tank', 'Row', 'Column', 'Weight (g)'];
const two: (MadeCell | null)[][] = [headings, ['T1', 1, 1, 182], ['T1', 1, 2, 175.5]];
const harvestOfTwo = ['container,row,column,fresh_weight', 'T1,1,1,182', 'T1,1,2,175.5'];

/** Changes the first sheet of a file. */
const inSheet =
  (change: (content: string) => string): Edit =>
  (path, content) =>
    path === 'xl/worksheets/sheet1.xml' || path === 'content.xml' ? change(content) : content;

const xlsx = (rows: (MadeCell | null)[][], edit?: Edit, joined: string[] = []): Awkward['file'] => ({
  kind: 'xlsx',
  sheets: [{ name: 'Harvest', rows, joined }],
  options: edit === undefined ? {} : { edit },
});

/** The same rows written by the library that reads them, in the forms of several programs. */
const written = (bookType: BookType): Uint8Array => {
  const book = utils.book_new();
  const sheet = utils.aoa_to_sheet([headings, ['T1', 1, 1, 182], ['T1', 1, 2, 175.5]]);
  utils.book_append_sheet(book, sheet, 'Harvest');
  return new Uint8Array(write(book, { type: 'array', bookType }) as ArrayBuffer);
};

const utf16 = (text: string): Uint8Array =>
  new Uint8Array(Array.from(text, (sign) => [sign.charCodeAt(0) & 255, sign.charCodeAt(0) >> 8]).flat());

const asOtherProgramsWrite: readonly Awkward[] = [
  {
    title: 'cells and rows without their names',
    file: xlsx(
      two,
      inSheet((content) => content.replaceAll(/ r="[A-Z]*\d+"/g, '')),
    ),
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'the strict form of Office Open XML',
    file: xlsx(two, (_, content) =>
      content
        .replaceAll(
          'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
          'http://purl.oclc.org/ooxml/spreadsheetml/main',
        )
        .replaceAll(
          'http://schemas.openxmlformats.org/officeDocument/2006/relationships',
          'http://purl.oclc.org/ooxml/officeDocument/relationships',
        ),
    ),
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'texts in runs of several looks, with their reading beside them',
    file: xlsx(two, (path, content) =>
      path === 'xl/sharedStrings.xml'
        ? content.replace(
            '<t xml:space="preserve">Weight (g)</t>',
            '<r><t>Wei</t></r><r><rPr><b/></rPr><t>ght (g)</t></r><rPh sb="0" eb="1"><t>read otherwise</t></rPh>',
          )
        : content,
    ),
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'no list of shared texts',
    file: {
      kind: 'xlsx',
      sheets: [{ name: 'Harvest', rows: two }],
      options: { inline: true, edit: (path, content) => (path === 'xl/sharedStrings.xml' ? null : content) },
    },
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'a sheet that is formatted to its last cell',
    file: xlsx(
      two,
      inSheet((content) =>
        content.replace('</sheetData>', '<row r="1048576"><c r="XFD1048576" s="0"/></row></sheetData>'),
      ),
    ),
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'equal neighbours written as one repeated cell',
    file: {
      kind: 'ods',
      sheets: [{ name: 'Harvest', rows: [headings, ['T1', 1, 1, 182]] }],
      options: {
        edit: inSheet((content) =>
          content.replace(
            '<table:table-cell office:value-type="float" office:value="1"><text:p>1</text:p></table:table-cell>'.repeat(
              2,
            ),
            '<table:table-cell table:number-columns-repeated="2" office:value-type="float" office:value="1"><text:p>1</text:p></table:table-cell>',
          ),
        ),
      },
    },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,182'],
    notUsed: [],
  },
  {
    title: 'a sheet with quotes, a sign of exclamation and a picture in its name',
    file: { kind: 'ods', sheets: [{ name: `Imke's "best"! 🌱`, rows: two }] },
    corrections: { always: ['container=T1'] },
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'its sign between cells in the first line, a byte order mark, and signs at the ends of lines',
    file: { text: strToU8('\uFEFFsep=;\r\ntank;row;column;weight;;\r\nT1;1;1;182;;\r\nT1;1;2;175.5;;\r\n') },
    harvest: harvestOfTwo,
    notUsed: ['A1'],
  },
  {
    title: 'lines that end as on an old Macintosh',
    file: { text: strToU8('tank,row,column,weight\rT1,1,1,182\rT1,1,2,175.5\r') },
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'UTF-16 without its mark',
    file: { text: utf16('tank\trow\tcolumn\tweight\nT1\t1\t1\t182\nT1\t1\t2\t175.5\n') },
    harvest: harvestOfTwo,
    notUsed: [],
  },
  {
    title: 'a web page that is called a spreadsheet',
    file: { text: strToU8('<html><table><tr><td>tank</td><td>weight</td></tr></table></html>') },
    refused: ['no spreadsheet'],
  },
  {
    title: 'a picture',
    file: { text: Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13) },
    refused: ['no spreadsheet'],
  },
  {
    title: 'an .xlsx of another writer',
    file: { text: written('xlsx') },
    harvest: harvestOfTwo,
    notUsed: [],
  },
  { title: 'an .ods of another writer', file: { text: written('ods') }, harvest: harvestOfTwo, notUsed: [] },
  { title: 'text of another writer', file: { text: written('csv') }, harvest: harvestOfTwo, notUsed: [] },
  { title: 'the old binary format', file: { text: written('biff8') }, refused: ['locked'] },
  { title: 'the packed binary format', file: { text: written('xlsb') }, refused: ['no spreadsheet'] },
];

const notes = [...headings, 'Notes'];
const withNotes: (MadeCell | null)[][] = [notes, ['T1', 1, 1, 182, 'slugs'], ['T1', 1, 2, 175.5, 'beetles']];

const hidden: readonly Awkward[] = [
  {
    title: 'rows that a filter hides, and a hidden column',
    file: xlsx(
      two,
      inSheet((content) =>
        content
          .replace('<row r="3">', '<row r="3" hidden="1">')
          .replace('<sheetData>', '<cols><col min="3" max="3" width="9" hidden="1"/></cols><sheetData>'),
      ),
    ),
    harvest: harvestOfTwo,
    notUsed: [],
    remarks: ['Hidden in Harvest, as by a filter, and read all the same: 3, C.'],
  },
  {
    title: 'weights by formulas, as they were when the file was saved',
    file: xlsx([headings, ['T1', 1, 1, { formula: '200-18', value: 182 }], ['T1', 1, 2, 175.5]]),
    harvest: harvestOfTwo,
    notUsed: [],
    remarks: ['Cells of Harvest that are formulas: 1. What they came to when the file was saved is taken.'],
  },
  {
    title: 'a formula saved without what it came to',
    file: xlsx(
      two,
      inSheet((content) => content.replace('<v>182</v>', '<f>A9-B9</f>')),
    ),
    refused: ['Harvest!D2: "=A9-B9" is the fault of a formula'],
  },
  {
    title: 'values hidden under a joined cell (.xlsx)',
    file: xlsx(withNotes, undefined, ['E2:E3']),
    harvest: ['container,row,column,fresh_weight,remark', 'T1,1,1,182,slugs', 'T1,1,2,175.5,slugs'],
    notUsed: ['Harvest!E3'],
  },
  {
    title: 'values hidden under a joined cell (.ods)',
    file: {
      kind: 'ods',
      sheets: [
        { name: 'Harvest', rows: [...withNotes.slice(0, 2), ['T1', 1, 2, 175.5, null]], joined: ['E2:E3'] },
      ],
      options: {
        edit: inSheet((content) =>
          content.replace(
            '<table:covered-table-cell/>',
            '<table:covered-table-cell office:value-type="string"><text:p>beetles</text:p></table:covered-table-cell>',
          ),
        ),
      },
    },
    harvest: ['container,row,column,fresh_weight,remark', 'T1,1,1,182,slugs', 'T1,1,2,175.5,slugs'],
    notUsed: [],
    remarks: ['Hidden under joined cells, and not used: "beetles".'],
  },
  {
    title: "notes on a heading, and on one plant's weight of several",
    file: xlsx([
      ['Tank', 'Row', 'Column', { text: 'Plant 1', note: 'old scale' }, 'Plant 2'],
      ['T1', 1, 1, 92, { text: '90', note: 'Imke: two heads' }],
    ]),
    harvest: [
      'container,row,column,plant,fresh_weight,remark',
      'T1,1,1,1,92,',
      'T1,1,1,2,90,Imke: two heads',
    ],
    notUsed: ['Harvest!D1'],
  },
];

const values: readonly Awkward[] = [
  {
    title: 'a weight shown as a percentage',
    file: xlsx([headings, ['T1', 1, 1, { number: 0.5, behind: '%' }], ['T1', 1, 2, 175.5]]),
    refused: ['Harvest!D2: "0.5" is shown as a percentage'],
  },
  {
    title: 'pounds and ounces',
    file: xlsx([
      ['Tank', 'Row', 'Column', 'Weight'],
      ['T1', 1, 1, '1 lb 3 oz'],
      ['T1', 1, 2, '0 lb 15.5 oz'],
    ]),
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,19', 'T1,1,2,15.5'],
    trial: 'unit: oz',
    notUsed: [],
  },
  {
    title: 'commas that may part thousands',
    file: { text: strToU8('tank,row,column,weight\nT1,1,1,"1,182"\nT1,1,2,950\n') },
    refused: ['D2: "1,182" may have a decimal mark in it, or one between thousands'],
  },
  {
    title: 'points that may part thousands',
    file: { text: strToU8('tank;row;column;weight\nT1;1;1;1.182\nT1;1;2;950\n') },
    refused: ['D2: "1.182" may have a decimal mark in it, or one between thousands'],
  },
  {
    title: 'commas that the grower says are decimal marks',
    file: { text: strToU8('tank,row,column,weight kg\nT1,1,1,"1,182"\nT1,1,2,"1,950"\n') },
    corrections: { decimal: ',' },
    harvest: ['container,row,column,fresh_weight', 'T1,1,1,1.182', 'T1,1,2,1.950'],
    trial: 'unit: kg',
    notUsed: [],
  },
  {
    title: 'weights without a unit among others with one',
    file: xlsx([
      ['Tank', 'Row', 'Column', 'Weight'],
      ['T1', 1, 1, '6.5 oz'],
      ['T1', 1, 2, 6],
    ]),
    refused: ['Harvest!D3: "6" says no unit, and others beside it say oz'],
  },
  {
    title: 'words that every object of the language has',
    file: xlsx([headings, ['T1', 1, 1, 'constructor'], ['T1', 1, 2, '__proto__']]),
    refused: ['Harvest!D2: "constructor" is not a weight', 'Harvest!D3: "__proto__" is not a weight'],
  },
  {
    title: 'text that a spreadsheet would run, and an apostrophe before a number',
    file: {
      text: strToU8(`tank,row,column,weight,remark\nT1,1,1,182,"=HYPERLINK(""x"")"\nT1,1,2,'175.5,\n`),
    },
    refused: [`D3: "'175.5" is not a weight`],
  },
  {
    title: 'a total of the pot for each cut',
    file: xlsx([
      ['Tank', 'Row', 'Column', 'Cut 1', 'Cut 2', 'Pot total cut 1', 'Pot total cut 2'],
      ['T1', 1, 1, 182, 90, 183, 91],
    ]),
    harvest: ['container,row,column,cut,fresh_weight,pot_total', 'T1,1,1,1,182,183', 'T1,1,1,2,90,91'],
    notUsed: [],
  },
  {
    title: 'a total that is not said to be of which cut',
    file: xlsx([
      ['Tank', 'Row', 'Column', 'Cut 1', 'Cut 2', 'Pot total'],
      ['T1', 1, 1, 182, 90, 272],
    ]),
    refused: ['Harvest!A2: "272" is a total, and it is not clear of which pot and cut'],
  },
];

const placed: readonly Awkward[] = [
  {
    title: 'a drawn row whose plants are all lost, in a tank drawn above another',
    file: xlsx([['T1'], ['Row', 1, 2], [2], [1, 182, 175.5], ['T2'], ['Row', 1, 2], [1, 177, 201]]),
    harvest: [...harvestOfTwo, 'T2,1,1,177', 'T2,1,2,201'],
    notUsed: [],
  },
  {
    title: 'a title that names no tank of the trial',
    file: xlsx([['T1'], ['Row', 'Column', 'Weight'], [1, 1, 182], ['The last tank'], [1, 2, 175.5]]),
    refused: ['Harvest!A4: "The last tank" is no whole number'],
    isStart: true,
  },
  {
    title: 'a title with more beside it',
    file: xlsx([['T1'], ['Row', 'Column', 'Weight'], [1, 1, 182], ['T2', 'Monday'], [1, 2, 175.5]]),
    refused: ['Harvest!A4: "T2" is no whole number', 'Harvest!B4: "Monday" is no whole number'],
    isStart: true,
  },
  {
    title: 'two tables side by side',
    file: xlsx([
      [...headings, null, ...headings],
      ['T1', 1, 1, 182, null, 'T2', 1, 1, 177],
      ['T1', 1, 2, null, null, 'T2', 1, 2, 201],
    ]),
    refused: [
      'Harvest!F1: A and F are both taken for container',
      'Harvest!G1: B and G are both taken for row',
      'Harvest!H1: C and H are both taken for column',
      'Harvest!I1: D and I are both taken for fresh_weight in g',
    ],
  },
  {
    title: 'a second table beneath, in another unit',
    file: xlsx([...two, [], ['Tank', 'Row', 'Column', 'Weight (oz)'], ['T2', 1, 1, 6.5]]),
    refused: ['Harvest!D5: "Weight (oz)" is not a weight', 'Harvest!A5: "Tank" is none of the containers'],
    isStart: true,
  },
  {
    title: 'columns that may be of plants or of cuts',
    file: xlsx([
      ['Tank', 'Row', 'Column', 1, 2],
      ['T1', 1, 1, 92, 90],
    ]),
    refused: ['Harvest!E1: D and E are both taken for fresh_weight in g'],
  },
  {
    title: 'a tank in a cell joined over its rows and the column of rows',
    file: xlsx([headings, ['T1', null, 1, 182]], undefined, ['A2:B2']),
    refused: ['Harvest!A2: "T1" stands in a cell that is joined over columns of different kinds'],
  },
  {
    title: 'a tank where the row should be',
    file: xlsx([headings, ['T1', 'T2', 1, 182]]),
    refused: ['Harvest!B2: "T2" is no whole number, as the row must be'],
  },
  {
    title: 'a last weight without its place',
    file: xlsx([...two, [null, null, null, 169]]),
    refused: ['Harvest!D4: this row has something of a plant and not its container, row, column'],
  },
  {
    title: 'a last plant that is dead, and a sentence beneath',
    file: xlsx([
      [...headings, 'Status'],
      ['T1', 1, 1, 182, null],
      ['T1', 1, 2, null, 'dead'],
      ['weighed on 20 October'],
    ]),
    harvest: ['container,row,column,fresh_weight,status', 'T1,1,1,182,', 'T1,1,2,,dead'],
    notUsed: ['Harvest!A4'],
  },
  {
    title: 'a place that the tank does not have',
    file: xlsx([headings, ['T1', 3, 1, 182]]),
    refused: ['Harvest!D2: row 3, column 1 is outside of T1, which has 2 rows and 2 columns'],
  },
  {
    title: 'the second cut alone, told by its day',
    file: { text: strToU8('tank,row,column,weight,date\nT1,1,1,82,2025-11-10 09:30\n') },
    harvest: ['container,row,column,cut,date,fresh_weight', 'T1,1,1,2,2025-11-10,82'],
    notUsed: [],
  },
];

export const moreAwkward: readonly Awkward[] = [...asOtherProgramsWrite, ...hidden, ...values, ...placed];
