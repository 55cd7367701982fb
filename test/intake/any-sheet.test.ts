import { strFromU8, strToU8 } from 'fflate';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fullGrid } from '../../src/check/full-grid.ts';
import { readHarvest } from '../../src/check/read-harvest.ts';
import { checkTrial } from '../../src/check/check-trial.ts';
import { readMetadata } from '../../src/check/read-metadata.ts';
import { bringIn, type Intake } from '../../src/intake/bring-in.ts';
import { openTarget } from '../../src/intake/open-target.ts';
import { proposals } from '../../src/intake/proposals.ts';
import { gramsIn } from '../../src/model/units.ts';
import { sha256 } from '../../src/read/sha256.ts';
import { readWorkbook } from '../../src/read/workbook.ts';
import { anySheet, type AnySheet } from './any-sheet.ts';

const runs = Number(process.env['TANKSIDE_SHEETS'] ?? 300);

/** Read, proposed and brought in, with nothing corrected. */
function broughtIn({ name, bytes, trialYaml, layoutCsv }: AnySheet): Intake {
  const folder = new Map([
    ['trial.yaml', strToU8(trialYaml)],
    ['layout.csv', strToU8(layoutCsv)],
  ]);
  const workbook = readWorkbook(bytes);
  const { target, problems } = openTarget('any-trial', folder);
  if (typeof workbook === 'string' || target === null)
    throw new Error(`it does not open: ${JSON.stringify(workbook)} ${JSON.stringify(problems)}`);
  const mappings = proposals(workbook, target.known).map(({ mapping }) => mapping);
  return bringIn({ name, bytes, sha256: sha256(bytes), workbook }, mappings, { target });
}

const line = (
  place: { container: string; row: number; column: number; cut: number },
  plant: number,
  what: string,
) => `${place.container} ${place.row} ${place.column}, plant ${plant}, cut ${place.cut}: ${what}`;

/** What was written down of each plant, in a line for each. */
function writtenDown({ plants, unit }: AnySheet): string[] {
  return plants.flatMap((one) => {
    if (one.weight === null && one.status === '') return [];
    const grams = one.weight === null ? one.status : (one.weight * gramsIn[unit]!).toFixed(6);
    return [line(one, one.plant, grams)];
  });
}

/** The same as harvest.csv and trial.yaml say it now, read by the check's own reader. */
function saidByHarvest(files: ReadonlyMap<string, Uint8Array>): string[] {
  const faults: string[] = [];
  const report = ({ rule }: { rule: string }, { message }: { message: string }): void =>
    void faults.push(`${rule}: ${message}`);
  const metadata = readMetadata(files.get('trial.yaml')!, report)!;
  const harvest = readHarvest(
    files.get('harvest.csv')!,
    metadata,
    fullGrid(metadata, () => undefined),
    () => undefined,
  );
  if (harvest === null || faults.length > 0)
    throw new Error(`harvest.csv cannot be read: ${faults.join('; ')}`);
  return harvest.records.flatMap((one) => {
    const weight = one.values['fresh_weight'] ?? null;
    const said = weight === null ? (one.status === 'weighed' ? '' : one.status) : weight.toFixed(6);
    return said === '' ? [] : [line(one, one.plant ?? 1, said)];
  });
}

/** More plants than the layout has in a pot are an error of the check, which both the command and the page print. */
function isRefusedByCheck(
  { trialYaml, layoutCsv }: AnySheet,
  files: ReadonlyMap<string, Uint8Array>,
): boolean {
  const before = [
    ['trial.yaml', strToU8(trialYaml)],
    ['layout.csv', strToU8(layoutCsv)],
  ] as const;
  const context = { cultivars: null, today: '2026-01-15', prefix: '' };
  const { problems } = checkTrial('any-trial', new Map([...before, ...files]), context);
  return problems.some(({ rule }) => rule === 'plant-beyond-set');
}

test('a sheet of any form becomes what was written on it, or is refused with the reason', () => {
  const counts = { sound: 0, imported: 0 };
  fc.assert(
    fc.property(anySheet, (sheet) => {
      const { files, problems } = broughtIn(sheet);
      const isSound = sheet.choices.slip === 'none' && sheet.choices.unitIn !== 'some cells';
      if (isSound) counts.sound += 1;
      if (files === null) {
        expect(problems.map(({ message }) => message).join('')).not.toBe('');
        return;
      }
      if (isRefusedByCheck(sheet, files)) return;
      if (isSound) counts.imported += 1;
      expect(saidByHarvest(files).sort(), strFromU8(files.get('harvest.csv')!)).toEqual(
        writtenDown(sheet).sort(),
      );
    }),
    { numRuns: runs },
  );
  // Refusing everything would be safe, and of no use.
  expect(counts.imported / counts.sound).toBeGreaterThan(0.6);
});
