import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { checkTaken } from '../../src/check/check-taken.ts';
import { weighTrialOf } from '../../src/publish/weigh-trials.ts';
import { checkTrial } from '../../src/check/check-trial.ts';
import { exportedFiles, filesToCheck, zipOfFolder } from '../../src/weigh/exported-files.ts';
import type { Entry } from '../../src/weigh/journal.ts';
import type { OpenedTrial } from '../../src/weigh/open-trial.ts';
import { editLines, noEdits, trialEdits } from '../../src/weigh/trial-edits.ts';
import { folderToWeigh, openedFolder, stateOf, weighed } from './folder-to-weigh.ts';

const today = '2025-11-02';
const weights = ['131', '74', '125', '80', '140', '77', '72', '119', '81', '133', '69', '128'];
const { trial } = openedFolder();
const entries: Entry[] = [
  { kind: 'cut', cut: 1, date: '2025-10-20' },
  ...trial.positions.map(({ container, row, column }, index) =>
    weighed(`${container} ${String(row)} ${String(column)}`, weights[index]!),
  ),
  { kind: 'total', container: 'T1', cut: 1, value: '628' },
  { kind: 'event', date: '2025-10-20', where: 'T1', what: 'cut before noon: dry, cool' },
];
const decode = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);

const problemsOf = (opened: OpenedTrial, of = entries) => {
  const state = stateOf(of, opened);
  const files = filesToCheck(opened, state, trialEdits(state, today));
  const taken = new Map([...files].map(([path, bytes]) => [`two-lettuces/${path}`, bytes]));
  return checkTaken({ files: taken, refused: [] }, today).problems;
};

describe('The folder that comes out', () => {
  test('passes the check as a finished trial', () => {
    expect(problemsOf(openedFolder())).toEqual([]);
  });

  test('does not pass while a plant lacks its row, and says which', () => {
    const [problem, ...more] = problemsOf(openedFolder(), entries.toSpliced(3, 1));
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ rule: 'no-weight-no-status', where: 'T1 1 3' });
  });

  test('has the trial.yaml of the grower, changed only where it was agreed', () => {
    const opened = openedFolder();
    const state = stateOf(entries, opened);
    const before = folderToWeigh().get('trial.yaml')!;
    expect(decode(exportedFiles(opened, state, noEdits).get('trial.yaml'))).toBe(before);
    const edits = { ...trialEdits(state, today), finish: false };
    expect(decode(exportedFiles(opened, state, edits).get('trial.yaml'))).toBe(
      before
        .replace('transplanted: 2025-09-12}', 'transplanted: 2025-09-12, cuts: [2025-10-20]}')
        .replace(
          '{id: T1, kind: tank, rows: 2, columns: 3}',
          '{id: T1, kind: tank, rows: 2, columns: 3, weighed_total: {value: 628, unit: g}}',
        ) + 'events:\n  - {date: 2025-10-20, where: T1, what: "cut before noon: dry, cool"}\n',
    );
  });

  test('keeps every other file to the byte', () => {
    const opened = openedFolder(folderToWeigh({ 'factsheet.mdx': 'Grown in rain.\n' }));
    const files = exportedFiles(opened, stateOf(entries, opened), noEdits);
    expect(decode(files.get('factsheet.mdx'))).toBe('Grown in rain.\n');
    expect([...files.keys()].sort()).toEqual(['factsheet.mdx', 'harvest.csv', 'layout.csv', 'trial.yaml']);
  });

  test('comes as a zip that is alike each time', () => {
    const opened = openedFolder();
    const files = exportedFiles(opened, stateOf(entries, opened), noEdits);
    const zip = zipOfFolder('two-lettuces', files, today);
    expect(zip).toEqual(zipOfFolder('two-lettuces', files, today));
    const inside = unzipSync(zip);
    expect(Object.keys(inside)).toEqual(
      ['harvest.csv', 'layout.csv', 'trial.yaml'].map((name) => `two-lettuces/${name}`),
    );
    expect(decode(inside['two-lettuces/trial.yaml'])).toBe(folderToWeigh().get('trial.yaml'));
  });
});

describe('A trial of the site, without its folder', () => {
  const bytes = new Map([...folderToWeigh()].map(([name, text]) => [name, new TextEncoder().encode(text)]));
  const checked = checkTrial('two-lettuces', bytes, { cultivars: null, today, prefix: '' }).trial!;
  const site: OpenedTrial = {
    trial: weighTrialOf(checked),
    given: [],
    remarks: [],
    files: null,
    readings: null,
  };

  test('passes the check just so', () => {
    expect(problemsOf(site)).toEqual([]);
  });

  test('gives its tables and what is to be written by hand, and never a trial.yaml', () => {
    const state = stateOf(entries, site);
    const edits = trialEdits(state, today);
    const files = exportedFiles(site, state, edits);
    expect([...files.keys()].sort()).toEqual(['for-trial-yaml.txt', 'harvest.csv']);
    expect(editLines(edits)).toEqual([
      'status: finished',
      'dates: {cuts: [2025-10-20]}',
      'containers:',
      '  - {id: T1, weighed_total: {value: 628, unit: g}}',
      'events:',
      '  - {date: 2025-10-20, where: T1, what: "cut before noon: dry, cool"}',
      'releases:',
      '  - {version: 1.0.0, date: 2025-11-02, note: First release.}',
    ]);
  });
});
