/** A small good trial folder that tests start from: two tanks of 2 x 2, two cultivars in each. */
const trialYaml = `title: Two lettuces in two tanks
version: 1.0.0
status: finished
question: Does the newcomer match the check cultivar?
crop: {name: Lettuce, species: Lactuca sativa}
season: {year: 2025, name: autumn}
dates: {sown: 2025-08-25, transplanted: 2025-09-12, cuts: [2025-10-20]}
site: {name: Fernhollow, country: IE, latitude: 52.9, longitude: -9.1, setting: rain shelter}
people: [{name: Imke Farrant, part: grower}]
licence: CC0-1.0
factors:
  - id: cultivar
    name: Cultivar
    kind: cultivar
    levels: [{id: cobalt-wren}, {id: slate-egret}]
    check: cobalt-wren
design: {arrangement: completely randomised, allotted: position, randomised: true}
containers:
  - {id: T1, kind: tank, rows: 2, columns: 2}
  - {id: T2, kind: tank, rows: 2, columns: 2}
variables:
  - {id: fresh_weight, name: Fresh weight, of: plant, kind: measured, unit: g, resolution: 1, lowest: 1, highest: 600}
releases:
  - {version: 1.0.0, date: 2025-11-02, note: First release.}
`;

const layoutCsv = `container,row,column,cultivar
T1,1,1,cobalt-wren
T1,1,2,slate-egret
T1,2,1,cobalt-wren
T1,2,2,slate-egret
T2,1,1,slate-egret
T2,1,2,slate-egret
T2,2,1,cobalt-wren
T2,2,2,cobalt-wren
`;

const harvestCsv = `container,row,column,fresh_weight,status,remark
T1,1,1,131,,
T1,1,2,142,,
T1,2,1,118,,
T1,2,2,156,,
T2,1,1,149,,
T2,1,2,137,,
T2,2,1,124,,
T2,2,2,,dead,slugs
`;

/** The good folder's files as text, to be changed by a test before they are checked. */
export function goodFiles(): Map<string, string> {
  return new Map([
    ['trial.yaml', trialYaml],
    ['layout.csv', layoutCsv],
    ['harvest.csv', harvestCsv],
  ]);
}

export const cultivars = [
  { id: 'cobalt-wren', name: 'Cobalt Wren', species: 'Lactuca sativa', synonyms: ['Blue Wren'] },
  { id: 'slate-egret', name: 'Slate Egret' },
  { id: 'russet-plover', name: 'Russet Plover' },
];

/** Texts as the bytes that a folder is read to. */
export function asBytes(files: ReadonlyMap<string, string>): Map<string, Uint8Array> {
  return new Map([...files].map(([path, text]) => [path, new TextEncoder().encode(text)]));
}
