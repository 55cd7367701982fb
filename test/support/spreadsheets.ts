/**
 * Spreadsheets written by hand, part by part after ECMA-376 (Office Open XML) and OASIS OpenDocument 1.3, so that what
 * is read was not written by the library that reads it.
 */
import { strToU8, zipSync } from 'fflate';

/** What a cell of a test's sheet holds. */
export type MadeCell =
  | string
  | number
  | boolean
  | { date: string }
  | { formula: string; value: number }
  | { fault: string }
  /** A number with what its format shows behind it, such as ` g`. */
  | { number: number; behind: string }
  | { text: string; note: string };

/** A sheet: its rows, null for an empty cell, and the areas that are joined (`A1:C1`). */
export interface MadeSheet {
  name: string;
  rows: readonly (readonly (MadeCell | null)[])[];
  joined?: readonly string[];
}

const xml = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
const text = (given: string): string =>
  given.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const letters = (column: number): string =>
  (column >= 26 ? letters(Math.floor(column / 26) - 1) : '') + String.fromCharCode(65 + (column % 26));

/** The days from the epoch that a workbook counts its dates from. */
const serial = (date: string, is1904: boolean): number =>
  Date.parse(`${date}T00:00:00Z`) / 86_400_000 -
  Date.parse(is1904 ? '1904-01-01' : '1899-12-30') / 86_400_000;

export interface XlsxOptions {
  /** Dates counted from 1904, as older Macintosh programs do. */
  is1904?: boolean;
  /** Texts in the cells themselves and not in a shared list. */
  inline?: boolean;
  edit?: Edit;
}

/** Changes a part of the file as another program would have written it; null leaves the part out. */
export type Edit = (path: string, content: string) => string | null;

/** An .xlsx file. */
export function xlsxFile(
  sheets: readonly MadeSheet[],
  { is1904 = false, inline = false, edit = (_, content) => content }: XlsxOptions = {},
): Uint8Array {
  const shared: string[] = [];
  const formats: string[] = [];
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
  const documents = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const packages = 'http://schemas.openxmlformats.org/package/2006';
  const files: Record<string, Uint8Array> = {};
  const put = (path: string, content: string): void => {
    const edited = edit(path, content);
    if (edited !== null) files[path] = strToU8(`${xml}\n${edited}`);
  };
  sheets.forEach((sheet, index) => {
    const rows = sheet.rows.map((row, at) => {
      const cells = row.map((cell, column) =>
        cell === null
          ? ''
          : xlsxCell(cell, `${letters(column)}${at + 1}`, { shared, formats, is1904, inline }),
      );
      return `<row r="${at + 1}">${cells.join('')}</row>`;
    });
    const joined = (sheet.joined ?? []).map((area) => `<mergeCell ref="${area}"/>`).join('');
    const notes = notesOf(sheet);
    put(
      `xl/worksheets/sheet${index + 1}.xml`,
      `<worksheet xmlns="${main}"><sheetData>${rows.join('')}</sheetData>${joined === '' ? '' : `<mergeCells>${joined}</mergeCells>`}</worksheet>`,
    );
    if (notes.length === 0) return;
    put(
      `xl/comments${index + 1}.xml`,
      `<comments xmlns="${main}"><authors><author/></authors><commentList>${notes.map(([ref, note]) => `<comment ref="${ref}" authorId="0"><text><t>${text(note)}</t></text></comment>`).join('')}</commentList></comments>`,
    );
    put(
      `xl/worksheets/_rels/sheet${index + 1}.xml.rels`,
      `<Relationships xmlns="${packages}/relationships"><Relationship Id="c" Type="${documents}/comments" Target="../comments${index + 1}.xml"/></Relationships>`,
    );
  });
  const listed = sheets.map(
    ({ name }, index) => `<sheet name="${text(name)}" sheetId="${index + 1}" r:id="s${index + 1}"/>`,
  );
  put(
    'xl/workbook.xml',
    `<workbook xmlns="${main}" xmlns:r="${documents}">${is1904 ? '<workbookPr date1904="1"/>' : ''}<sheets>${listed.join('')}</sheets></workbook>`,
  );
  const related = sheets.map(
    (_, index) =>
      `<Relationship Id="s${index + 1}" Type="${documents}/worksheet" Target="worksheets/sheet${index + 1}.xml"/>`,
  );
  put(
    'xl/_rels/workbook.xml.rels',
    `<Relationships xmlns="${packages}/relationships">${related.join('')}<Relationship Id="t" Type="${documents}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="y" Type="${documents}/styles" Target="styles.xml"/></Relationships>`,
  );
  put(
    '_rels/.rels',
    `<Relationships xmlns="${packages}/relationships"><Relationship Id="w" Type="${documents}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  );
  put(
    'xl/sharedStrings.xml',
    `<sst xmlns="${main}">${shared.map((one) => `<si><t xml:space="preserve">${text(one)}</t></si>`).join('')}</sst>`,
  );
  // Format 0 is general, 1 a date (14 is built in); each unit shown behind numbers follows.
  put(
    'xl/styles.xml',
    `<styleSheet xmlns="${main}"><numFmts>${formats.map((format, index) => `<numFmt numFmtId="${170 + index}" formatCode="${text(format)}"/>`).join('')}</numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="14" applyNumberFormat="1"/>${formats.map((_, index) => `<xf numFmtId="${170 + index}" applyNumberFormat="1"/>`).join('')}</cellXfs></styleSheet>`,
  );
  const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  put(
    '[Content_Types].xml',
    `<Types xmlns="${packages}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${type}.sheet.main+xml"/>${sheets.map((_, index) => `<Override PartName="/xl/worksheets/sheet${index + 1}.xml" ContentType="${type}.worksheet+xml"/>`).join('')}<Override PartName="/xl/sharedStrings.xml" ContentType="${type}.sharedStrings+xml"/><Override PartName="/xl/styles.xml" ContentType="${type}.styles+xml"/>${sheets.map((sheet, index) => (notesOf(sheet).length === 0 ? '' : `<Override PartName="/xl/comments${index + 1}.xml" ContentType="${type}.comments+xml"/>`)).join('')}</Types>`,
  );
  return zipSync(files, { mtime: new Date(2025, 9, 20, 12) });
}

function notesOf({ rows }: MadeSheet): [string, string][] {
  return rows.flatMap((row, at) =>
    row.flatMap((cell, column): [string, string][] =>
      typeof cell === 'object' && cell !== null && 'note' in cell
        ? [[`${letters(column)}${at + 1}`, cell.note]]
        : [],
    ),
  );
}

function xlsxCell(
  cell: MadeCell,
  ref: string,
  {
    shared,
    formats,
    is1904,
    inline,
  }: { shared: string[]; formats: string[]; is1904: boolean; inline: boolean },
): string {
  if (typeof cell === 'number') return `<c r="${ref}"><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c r="${ref}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if (typeof cell === 'string' || 'text' in cell) {
    const given = typeof cell === 'string' ? cell : cell.text;
    if (inline) return `<c r="${ref}" t="inlineStr"><is><t xml:space="preserve">${text(given)}</t></is></c>`;
    if (!shared.includes(given)) shared.push(given);
    return `<c r="${ref}" t="s"><v>${shared.indexOf(given)}</v></c>`;
  }
  if ('date' in cell) return `<c r="${ref}" s="1"><v>${serial(cell.date, is1904)}</v></c>`;
  if ('fault' in cell) return `<c r="${ref}" t="e"><f>1/0</f><v>${cell.fault}</v></c>`;
  if ('formula' in cell) return `<c r="${ref}"><f>${text(cell.formula)}</f><v>${cell.value}</v></c>`;
  const format = `0.0"${cell.behind}"`;
  if (!formats.includes(format)) formats.push(format);
  return `<c r="${ref}" s="${2 + formats.indexOf(format)}"><v>${cell.number}</v></c>`;
}

/** An .ods file, with runs of empty cells and rows written as repeats, to the end of the sheet as programs do. */
export function odsFile(
  sheets: readonly MadeSheet[],
  { edit = (_, content) => content }: { edit?: Edit } = {},
): Uint8Array {
  const spaces = ['office', 'table', 'text', 'style', 'number', 'dc']
    .map((name) =>
      name === 'dc'
        ? 'xmlns:dc="http://purl.org/dc/elements/1.1/"'
        : `xmlns:${name}="urn:oasis:names:tc:opendocument:xmlns:${name === 'number' ? 'datastyle' : name}:1.0"`,
    )
    .join(' ');
  const tables = sheets.map((sheet) => {
    const spans = spansOf(sheet.joined ?? []);
    const rows = sheet.rows.map((row, at) => {
      const cells = row.map((cell, column) => odsCell(cell, spans.get(`${at} ${column}`)));
      const rest = 1024 - row.length;
      return `<table:table-row>${cells.join('')}<table:table-cell table:number-columns-repeated="${rest}"/></table:table-row>`;
    });
    const empty = `<table:table-row table:number-rows-repeated="${1_048_576 - sheet.rows.length}"><table:table-cell table:number-columns-repeated="1024"/></table:table-row>`;
    return `<table:table table:name="${text(sheet.name)}"><table:table-column table:number-columns-repeated="1024"/>${rows.join('')}${empty}</table:table>`;
  });
  const content = `${xml}\n<office:document-content ${spaces} office:version="1.3"><office:body><office:spreadsheet>${tables.join('')}</office:spreadsheet></office:body></office:document-content>`;
  const type = 'application/vnd.oasis.opendocument.spreadsheet';
  const manifest = `${xml}\n<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3"><manifest:file-entry manifest:full-path="/" manifest:media-type="${type}"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>`;
  return zipSync(
    {
      mimetype: [strToU8(type), { level: 0 }],
      'content.xml': strToU8(edit('content.xml', content) ?? ''),
      'styles.xml': strToU8(`${xml}\n<office:document-styles ${spaces} office:version="1.3"/>`),
      'META-INF/manifest.xml': strToU8(manifest),
    },
    { mtime: new Date(2025, 9, 20, 12) },
  );
}

/** By row and column: how far a joined area reaches, or that a cell lies under one. */
function spansOf(joined: readonly string[]): Map<string, [number, number] | 'covered'> {
  const spans = new Map<string, [number, number] | 'covered'>();
  for (const area of joined) {
    const [, left = '', top = '', right = '', bottom = ''] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(area) ?? [];
    const [from, to] = [left, right].map((one) => one.charCodeAt(0) - 65) as [number, number];
    for (let row = Number(top) - 1; row < Number(bottom); row += 1)
      for (let column = from; column <= to; column += 1) spans.set(`${row} ${column}`, 'covered');
    spans.set(`${Number(top) - 1} ${from}`, [Number(bottom) - Number(top) + 1, to - from + 1]);
  }
  return spans;
}

function odsCell(cell: MadeCell | null, span: [number, number] | 'covered' | undefined): string {
  if (span === 'covered') return '<table:covered-table-cell/>';
  const spanned =
    span === undefined
      ? ''
      : ` table:number-rows-spanned="${span[0]}" table:number-columns-spanned="${span[1]}"`;
  const made = (attributes: string, shown: string, note = ''): string =>
    `<table:table-cell${spanned}${attributes}>${note}<text:p>${text(shown)}</text:p></table:table-cell>`;
  if (cell === null) return `<table:table-cell${spanned}/>`;
  if (typeof cell === 'number')
    return made(` office:value-type="float" office:value="${cell}"`, String(cell));
  if (typeof cell === 'boolean')
    return made(` office:value-type="boolean" office:boolean-value="${cell}"`, cell ? 'TRUE' : 'FALSE');
  if (typeof cell === 'string') return made(' office:value-type="string"', cell);
  if ('text' in cell)
    return made(
      ' office:value-type="string"',
      cell.text,
      `<office:annotation><text:p>${text(cell.note)}</text:p></office:annotation>`,
    );
  if ('date' in cell) return made(` office:value-type="date" office:date-value="${cell.date}"`, cell.date);
  if ('fault' in cell)
    return made(' table:formula="of:=1/0" office:value-type="string" office:string-value=""', cell.fault);
  if ('formula' in cell)
    return made(
      ` table:formula="of:=${text(cell.formula)}" office:value-type="float" office:value="${cell.value}"`,
      String(cell.value),
    );
  return made(
    ` office:value-type="float" office:value="${cell.number}"`,
    `${cell.number.toFixed(1)}${cell.behind}`,
  );
}

/** The names of all cells that a test wrote, as `Harvest!D7`; only the first of joined ones is written. */
export function cellsMade(sheets: readonly MadeSheet[]): string[] {
  return sheets.flatMap(({ name, rows }) =>
    rows.flatMap((row, at) =>
      row.flatMap((cell, column) =>
        cell === null || cell === '' ? [] : [`${name}!${letters(column)}${at + 1}`],
      ),
    ),
  );
}
