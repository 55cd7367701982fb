import type { Cell, Table } from './csv.ts';
import { guardedText } from './formula-guard.ts';
import { numberText } from './csv.ts';
import { xmlText } from './xml-text.ts';
import { zipFile } from './zip-file.ts';

/**
 * A spreadsheet in Office Open XML (ECMA-376, part 1), written here because it must come out synchronously
 * and alike to the byte at each build: numbers as numbers, text as text, no formulas, a bold header that
 * stays in view. Text is guarded as in the CSV files, so that a sheet saved as CSV runs nothing either.
 */
export interface Sheet {
  name: string;
  table: Table;
}

/** What a spreadsheet program shows of the file itself. */
export interface SpreadsheetAbout {
  title: string;
  creator: string;
  /** ISO 8601. */
  day: string;
}

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const documents = 'http://schemas.openxmlformats.org/officeDocument/2006';
const packages = 'http://schemas.openxmlformats.org/package/2006';
const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** The most characters that a cell may hold. */
const longest = 32_767;

/** The letters of a column: 0 is A, 26 is AA. */
export function columnLetters(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest === 0 ? '' : columnLetters(rest - 1)) + String.fromCharCode(65 + (index % 26));
}

/** `_x000D_` and the like stand for a character in a cell, so text that looks so has its mark escaped. */
const cellText = (text: string): string =>
  xmlText(
    guardedText(text)
      .slice(0, longest)
      .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
      .replace(/\r/g, '_x000D_'),
  );

function cellXml(cell: Cell, place: string, style: string): string {
  if (cell === null || cell === '') return '';
  if (typeof cell === 'number') {
    const value = numberText(cell);
    return value === '' ? '' : `<c r="${place}"${style}><v>${value}</v></c>`;
  }
  return `<c r="${place}"${style} t="inlineStr"><is><t xml:space="preserve">${cellText(cell)}</t></is></c>`;
}

function sheetXml({ table }: Sheet): string {
  const rows = [table.columns, ...table.rows].map((row, index) => {
    const style = index === 0 ? ' s="1"' : '';
    const cells = row.map((cell, column) =>
      cellXml(cell, `${columnLetters(column)}${String(index + 1)}`, style),
    );
    return `<row r="${String(index + 1)}">${cells.join('')}</row>`;
  });
  const view = `<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>`;
  return `${head}<worksheet xmlns="${main}">${view}<sheetData>${rows.join('')}</sheetData></worksheet>`;
}

const styles = `${head}<styleSheet xmlns="${main}"><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

const part = (path: string, type: string): string => `<Override PartName="${path}" ContentType="${type}"/>`;
const relation = (id: number, type: string, target: string): string =>
  `<Relationship Id="rId${String(id)}" Type="${type}" Target="${target}"/>`;
const relations = (inside: string): string =>
  `${head}<Relationships xmlns="${packages}/relationships">${inside}</Relationships>`;

/** An .xlsx file of the sheets, in their order. */
export function spreadsheet(sheets: readonly Sheet[], about: SpreadsheetAbout): Uint8Array {
  const numbers = sheets.map((_sheet, index) => index + 1);
  const path = (number: number): string => `worksheets/sheet${String(number)}.xml`;
  const parts: Record<string, string> = {
    '[Content_Types].xml': `${head}<Types xmlns="${packages}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${part('/xl/workbook.xml', `${sheetType}.sheet.main+xml`)}${part('/xl/styles.xml', `${sheetType}.styles+xml`)}${part('/docProps/core.xml', 'application/vnd.openxmlformats-package.core-properties+xml')}${numbers.map((number) => part(`/xl/${path(number)}`, `${sheetType}.worksheet+xml`)).join('')}</Types>`,
    '_rels/.rels': relations(
      relation(1, `${documents}/relationships/officeDocument`, 'xl/workbook.xml') +
        relation(2, `${packages}/relationships/metadata/core-properties`, 'docProps/core.xml'),
    ),
    'docProps/core.xml': `${head}<cp:coreProperties xmlns:cp="${packages}/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>${xmlText(about.title)}</dc:title><dc:creator>${xmlText(about.creator)}</dc:creator><dcterms:created xsi:type="dcterms:W3CDTF">${about.day}T00:00:00Z</dcterms:created></cp:coreProperties>`,
    'xl/workbook.xml': `${head}<workbook xmlns="${main}" xmlns:r="${documents}/relationships"><sheets>${sheets.map((sheet, index) => `<sheet name="${xmlText(sheet.name)}" sheetId="${String(index + 1)}" r:id="rId${String(index + 1)}"/>`).join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': relations(
      numbers
        .map((number) => relation(number, `${documents}/relationships/worksheet`, path(number)))
        .join('') + relation(sheets.length + 1, `${documents}/relationships/styles`, 'styles.xml'),
    ),
    'xl/styles.xml': styles,
  };
  sheets.forEach((sheet, index) => (parts[`xl/${path(index + 1)}`] = sheetXml(sheet)));
  const encoder = new TextEncoder();
  const entries = Object.entries(parts).map(([name, text]) => ({ name, bytes: encoder.encode(text) }));
  return zipFile(entries, about.day);
}
