import { openTrial, type OpenedTrial } from '../../src/weigh/open-trial.ts';
import type { Entry, KeptEntry, WeighedEntry } from '../../src/weigh/journal.ts';
import type { Place } from '../../src/weigh/place.ts';
import { weighState, type WeighState } from '../../src/weigh/weigh-state.ts';

/** A growing trial of two tanks of 2 x 3, two cultivars in turn; what is given replaces or adds to its files. */
export function folderToWeigh(changes: Record<string, string | null> = {}): Map<string, string> {
  const files = new Map([
    [
      'trial.yaml',
      `title: Two lettuces in two tanks
version: 0.1.0 # not released yet
status: growing
question: Does the newcomer match the check cultivar?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: 2025, name: autumn}
dates: {sown: 2025-08-25, transplanted: 2025-09-12}
site: {name: Fernhollow, setting: rain shelter}
people: [{name: Imke Farrant, part: grower}]
licence: CC0-1.0
factors:
  - id: cultivar
    name: Cultivar
    levels: [{id: wren}, {id: egret}]
    check: wren
design: {arrangement: completely randomised, allotted: position, randomised: true}
containers:
  - {id: T1, kind: tank, rows: 2, columns: 3}
  - {id: T2, kind: tank, rows: 2, columns: 3}
variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g, resolution: 1, lowest: 5, highest: 600}
`,
    ],
    [
      'layout.csv',
      `container,row,column,cultivar
T1,1,1,wren
T1,1,2,egret
T1,1,3,wren
T1,2,1,egret
T1,2,2,wren
T1,2,3,egret
T2,1,1,egret
T2,1,2,wren
T2,1,3,egret
T2,2,1,wren
T2,2,2,egret
T2,2,3,wren
`,
    ],
  ]);
  for (const [name, text] of Object.entries(changes)) {
    if (text === null) files.delete(name);
    else files.set(name, text);
  }
  return files;
}

/** Opens the folder for weighing; throws with the problems where it cannot be. */
export function openedFolder(files: Map<string, string> = folderToWeigh()): OpenedTrial {
  const bytes = new Map([...files].map(([name, text]) => [name, new TextEncoder().encode(text)]));
  const { opened, problems } = openTrial({ name: 'two-lettuces', files: bytes });
  if (opened === null) throw new Error(problems.map(({ message }) => message).join('\n'));
  return opened;
}

/** A journal of entries, in order. */
export function journalOf(...entries: Entry[]): KeptEntry[] {
  return entries.map((entry, index) => ({ number: index + 1, at: '2025-10-20T09:00:00.000Z', entry }));
}

export function placeOf(text: string): Place {
  const [container = '', row, column, plant = '1'] = text.split(' ');
  return {
    container,
    row: Number(row),
    column: Number(column),
    plant: plant === 'whole' ? null : Number(plant),
  };
}

/** What was weighed at a place such as `T1 2 3`. */
export function weighed(place: string, value: string, more: Partial<WeighedEntry> = {}): WeighedEntry {
  const values = { fresh_weight: value };
  const at = { place: placeOf(place), cut: 1, date: '2025-10-20' };
  return { kind: 'weighed', ...at, status: 'weighed', values, remark: '', kept: [], ...more };
}

/** The state that entries lead to. */
export function stateOf(entries: Entry[], opened: OpenedTrial = openedFolder()): WeighState {
  return weighState(opened, journalOf(...entries));
}
