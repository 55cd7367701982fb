import type { FactSheet } from '../model/fact-sheet.ts';
import { say } from '../model/say.ts';
import { readFactSheet } from '../read/read-fact-sheet.ts';
import type { SheetFault, SheetFaultKind } from '../read/sheet-fault.ts';
import type { Yaml } from '../read/yaml.ts';
import { explainRefusals } from './explain-refusals.ts';
import { isMapping } from './read-metadata.ts';
import type { Report } from './rule.ts';
import { reportNotAMapping } from './rules/not-a-mapping.ts';
import { reportSheetAttribute } from './rules/sheet-wrong-attribute.ts';
import { reportSheetEventAttribute } from './rules/sheet-event-attribute.ts';
import { reportSheetExpression } from './rules/sheet-expression.ts';
import { reportSheetExpressionAttribute } from './rules/sheet-expression-attribute.ts';
import { reportSheetImage } from './rules/sheet-image.ts';
import { reportSheetImport } from './rules/sheet-import.ts';
import { reportSheetLink } from './rules/sheet-link.ts';
import { reportSheetRawHtml } from './rules/sheet-raw-html.ts';
import { reportSheetSpreadAttribute } from './rules/sheet-spread-attribute.ts';
import { reportSheetFootnote, reportSheetFrontMatter, reportSheetSyntax } from './rules/sheet-syntax.ts';
import { reportSheetUnseenCharacter } from './rules/sheet-unseen-character.ts';
import { reportSheetTooLarge } from './rules/sheet-too-large.ts';
import { textOf } from './text-file.ts';
import { reportYamlFaults } from './yaml-file.ts';

const reports: Readonly<Record<SheetFaultKind, (report: Report, file: string, fault: SheetFault) => void>> = {
  'too large': reportSheetTooLarge,
  'too deep': reportSheetTooLarge,
  'too wide': reportSheetTooLarge,
  syntax: reportSheetSyntax,
  'front matter': reportSheetFrontMatter,
  unseen: reportSheetUnseenCharacter,
  import: reportSheetImport,
  expression: reportSheetExpression,
  'raw tag': reportSheetRawHtml,
  'event attribute': reportSheetEventAttribute,
  'spread attribute': reportSheetSpreadAttribute,
  'expression attribute': reportSheetExpressionAttribute,
  'bare attribute': reportSheetAttribute,
  'attribute twice': reportSheetAttribute,
  link: reportSheetLink,
  footnote: reportSheetFootnote,
  image: reportSheetImage,
};

/** What stands for a key that a sheet's front matter leaves out, taken from its trial; null across trials. */
export type Implied = Readonly<Record<string, unknown>> | null;

/**
 * The fact sheet that a file holds, or null with the reasons reported. What its components ask for is checked
 * against the findings later.
 *
 * @param file as the report names it
 * @param prefix what the whole path begins with, for the sheet's own file
 */
export function factSheetOf(
  file: string,
  bytes: Uint8Array,
  implied: Implied,
  report: Report,
  prefix = '',
): FactSheet | null {
  const text = textOf(file, bytes, report);
  if (text === null) return null;
  const { sheet, faults, yaml } = readFactSheet(text, prefix + file);
  checkFrontMatter(file, yaml, implied, report);
  for (const fault of faults) reports[fault.kind](report, file, fault);
  return sheet;
}

const start = { line: 1, column: 1 };
const nowhere = { place: () => start, keyPlace: () => start };

function checkFrontMatter(file: string, yaml: Yaml | null, implied: Implied, report: Report): void {
  if (yaml !== null && yaml.faults.length > 0) {
    reportYamlFaults(file, yaml, report);
    return;
  }
  const value = yaml?.value ?? {};
  if (!isMapping(value)) {
    const wanted = say('keys and values, such as title: What three trials say of lettuce');
    reportNotAMapping(report, file, value, wanted);
    return;
  }
  explainRefusals('sheet', { ...implied, ...value }, file, yaml ?? nowhere, report);
}
