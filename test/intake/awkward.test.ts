import { strFromU8, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { bringIn } from '../../src/intake/bring-in.ts';
import { corrected } from '../../src/intake/corrections.ts';
import type { Mapping } from '../../src/intake/mapping.ts';
import { openTarget } from '../../src/intake/open-target.ts';
import { proposals } from '../../src/intake/proposals.ts';
import { sha256 } from '../../src/read/sha256.ts';
import { readWorkbook } from '../../src/read/workbook.ts';
import { cellsMade } from '../support/spreadsheets.ts';
import { awkward, fileOf, type Awkward } from './awkward-spreadsheets.ts';

const trialYaml = `title: Two lettuces in two tanks
version: 1.0.0
status: finished
question: Does the newcomer match the check cultivar?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: 2025, name: autumn}
dates: {sown: 2025-08-25, transplanted: 2025-09-12, cuts: [2025-10-20, 2025-11-10]}
site: {name: Fernhollow, country: IE, setting: rain shelter}
people: [{name: Imke Farrant, part: grower}]
licence: CC0-1.0
factors:
  - id: cultivar
    name: Cultivar
    kind: cultivar
    levels: [{id: cobalt-wren, name: Cobalt Wren}, {id: slate-egret, name: Slate Egret}]
design: {arrangement: completely randomised, allotted: position, randomised: true}
containers:
  - {id: T1, kind: tank, rows: 2, columns: 2}
  - {id: T2, kind: tank, rows: 2, columns: 2}
variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g}
releases:
  - {version: 1.0.0, date: 2025-11-12, note: First release.}
`;
const layoutCsv = `container,row,column,cultivar
T1,1,1,cobalt-wren
T1,1,2,slate-egret
T1,2,1,slate-egret
T1,2,2,cobalt-wren
T2,1,1,slate-egret
T2,1,2,cobalt-wren
T2,2,1,cobalt-wren
T2,2,2,slate-egret
`;

const folder = new Map([
  ['trial.yaml', strToU8(trialYaml)],
  ['layout.csv', strToU8(layoutCsv)],
]);

/** What the command line and the page do, in one: read, propose, correct, bring in. */
function broughtIn(given: Awkward) {
  const { name, bytes } = fileOf(given);
  const workbook = readWorkbook(bytes);
  if (typeof workbook === 'string') return workbook;
  const { target } = openTarget('two-lettuces', folder);
  if (target === null) throw new Error('the test trial does not open');
  const proposed = proposals(workbook, target.known).map(({ mapping }) => mapping);
  const { corrections } = given;
  const mappings: readonly Mapping[] =
    corrections === undefined
      ? proposed
      : workbook.sheets.slice(0, 1).map((sheet) => {
          const mapping = corrected(sheet, proposed[0] ?? null, corrections, target.known);
          if ('fault' in mapping) throw new Error(mapping.fault);
          return mapping;
        });
  return bringIn({ name, bytes, sha256: sha256(bytes), workbook }, mappings, { target });
}

it('has at least twenty awkward spreadsheets', () => {
  expect(awkward.length).toBeGreaterThan(20);
});

const titled = (some: readonly Awkward[]) => some.map((one) => [one.title, one] as const);
const refused = awkward.filter((one) => one.refused !== undefined);
const imported = awkward.filter((one) => one.harvest !== undefined);

it.each(titled(refused))('%s: is refused, with each reason', (_, given) => {
  const outcome = broughtIn(given);
  if (typeof outcome === 'string') {
    expect(given.refused).toEqual([outcome]);
    return;
  }
  expect(outcome.files).toBeNull();
  const told = given.isStart === true ? outcome.problems.slice(0, given.refused!.length) : outcome.problems;
  const messages = told.map(({ message }) => message);
  const beginnings = messages.map((message, index) => message.slice(0, given.refused![index]?.length ?? 0));
  expect(beginnings).toEqual(given.refused);
});

describe.each(titled(imported))('%s', (_, given) => {
  const outcome = broughtIn(given);
  if (typeof outcome === 'string') throw new Error(outcome);

  it('becomes the harvest that was written down', () => {
    expect(outcome.problems).toEqual([]);
    expect(strFromU8(outcome.files!.get('harvest.csv')!)).toBe(
      given.harvest!.map((line) => `${line}\n`).join(''),
    );
    expect(strFromU8(outcome.files!.get('trial.yaml')!)).toContain(given.trial ?? 'sources:');
  });

  it('accounts for every cell, used or not', () => {
    const notUsed = outcome.notUsed.map(({ cell }) => cell);
    expect(outcome.remarks).toEqual(expect.arrayContaining([...(given.remarks ?? [])]));
    expect(notUsed).toEqual(given.notUsed);
    const { sheets } = fileOf(given);
    const written = sheets === null ? null : cellsMade(sheets).sort();
    const accounted = [...new Set([...outcome.used.keys(), ...notUsed])].sort();
    if (written !== null) expect(accounted).toEqual(written);
    else expect(accounted.some((cell) => cell.endsWith('A1'))).toBe(true);
  });

  it('is kept as it was, with its sum, and read by the check', () => {
    const { name, bytes } = fileOf(given);
    expect(outcome.files!.get(`source/${name}`)).toEqual(bytes);
    expect(strFromU8(outcome.files!.get('trial.yaml')!)).toContain(sha256(bytes));
    const after = new Map([...folder, ...outcome.files!]);
    const context = { cultivars: null, today: '2026-01-15', prefix: '' };
    const { problems } = checkTrial('two-lettuces', after, context);
    // Most have a few plants only, or more than were laid out; what was brought in is sound in itself.
    const ofTheFew = ['missing-row', 'plant-beyond-set'];
    const errors = problems.filter(({ rule, severity }) => severity === 'error' && !ofTheFew.includes(rule));
    expect(errors).toEqual([]);
  });

  it('is read the same way again from what trial.yaml remembers', () => {
    const { target } = openTarget('two-lettuces', new Map([...folder, ...outcome.files!]));
    const { name, bytes } = fileOf(given);
    const workbook = readWorkbook(bytes);
    if (target === null || typeof workbook === 'string') throw new Error('it does not open again');
    const mappings = proposals(workbook, target.known, target.metadata.sources).map(({ mapping }) => mapping);
    const again = bringIn({ name, bytes, sha256: sha256(bytes), workbook }, mappings, { target });
    expect(again.problems).toEqual([]);
    expect(again.files!.get('harvest.csv')).toEqual(outcome.files!.get('harvest.csv'));
    expect(strFromU8(again.files!.get('trial.yaml')!)).toBe(strFromU8(outcome.files!.get('trial.yaml')!));
  });
});
