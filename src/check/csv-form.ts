import type { Metadata } from './facts.ts';
import type { DecimalMark } from './number.ts';
import { trimmed } from './number.ts';

/** The signs and headings with which a file is read. */
export interface CsvForm {
  delimiter: string;
  decimal: DecimalMark;
  headings: ReadonlyMap<string, string>;
}

/** harvest.csv is read as `harvest:` in trial.yaml declares it. */
export function harvestForm({ draft }: Metadata): CsvForm {
  const columns = Object.entries(draft.harvest?.columns ?? {});
  return {
    delimiter: draft.harvest?.delimiter ?? ',',
    decimal: draft.harvest?.decimal ?? '.',
    headings: new Map(columns.map(([name, { column }]) => [name, trimmed(column)])),
  };
}

/**
 * layout.csv and readings.csv mostly come from the same spreadsheet: where their first line shows the declared
 * delimiter they are read as declared, otherwise with commas and decimal points.
 */
export function companionForm(metadata: Metadata, bytes: Uint8Array): CsvForm {
  const declared = harvestForm(metadata);
  const [firstLine] = new TextDecoder()
    .decode(bytes.subarray(0, 2000))
    .trimStart()
    .split(/[\r\n]/, 1);
  return firstLine?.includes(declared.delimiter) ? declared : { ...declared, delimiter: ',', decimal: '.' };
}
