/** What may stand in English on a site in Spanish, and why. */
export interface Allowed {
  /** The pages, by their addresses. */
  pages: RegExp;
  texts: RegExp;
  /** Because the text is the same in both languages, or because English words stand in it. */
  by: 'same' | 'words';
  why: string;
}

const every = /^/;
const ofOneTrial = /^trials\/[^/]+\/$/;
const sheets = /^fact-sheets\/.|\/fact-sheet\//;

export const allowedInEnglish: readonly Allowed[] = [
  {
    pages: every,
    by: 'same',
    texts: /^[\w.-]+\.(csv|json|yaml|mdx|tsv|txt|R|cff|bib|ris|xlsx|zip|parquet|jsonld)$/,
    why: 'the name of a file',
  },
  {
    pages: every,
    by: 'same',
    texts: /^(SHA256SUMS|Python|JavaScript|SVG|PNG|CC0-1\.0|Creative Commons Zero 1\.0 Universal)$/,
    why: 'a name',
  },
  { pages: every, by: 'same', texts: /^\(?https?:\/\/\S+$/, why: 'an address' },
  {
    pages: every,
    by: 'same',
    texts: /^(, )?([mµ]?mol\/L|meq\/L|US gal|US gal\/lb|oz\/US gal)$/,
    why: 'a unit',
  },
  { pages: every, by: 'same', texts: /^Lettuce$/, why: 'the crop, as its trial names it' },
  {
    pages: /^trials\/solution-strength-2026\//,
    by: 'same',
    texts: /^Solution strength$/,
    why: 'a factor, as its grower names it; the page of planning offers one of that name',
  },
  { pages: every, by: 'same', texts: /^tip burn$/, why: 'a remark of a grower’s' },
  {
    pages: every,
    by: 'same',
    texts: /^First release\.$/,
    why: 'the note of a release, as a grower wrote it; a new trial on an English site begins with the same',
  },
  {
    pages: /^fact-sheets\/|\/fact-sheet\//,
    by: 'same',
    texts: /^Español$/,
    why: 'a language by its own name',
  },
  {
    pages: every,
    by: 'same',
    texts: /\[Data set\]\. .*https:/,
    why: 'a citation is one sentence wherever it stands, in files too',
  },
  {
    pages: /^data\/[^/]+\/$/,
    by: 'same',
    texts:
      /^(container|row|column|plot|block|cultivar|cut|plant|fresh_weight|status|pot_total|remark|weighed|not weighed|dead|culled|no regrowth)$/,
    why: 'a column of weights.csv or a value in it, as the file has it',
  },
  {
    pages: /^methods\/$/,
    by: 'same',
    texts: /\(\d{4}\)|^JCGM/,
    why: 'a publication, cited by its own title',
  },
  { pages: /^methods\/$/, by: 'words', texts: /\(\d{4}\)|^JCGM/, why: 'a publication, by its own title' },
  { pages: every, by: 'words', texts: /CRC Handbook of Chemistry and Physics/, why: 'a publication' },
  {
    pages: /^methods\/components\/$/,
    by: 'same',
    texts: /^([A-Z][a-z]+){1,3}$/,
    why: 'a component, by the name that is written in a sheet',
  },
  {
    pages: /^methods\/components\/$/,
    by: 'same',
    texts: /^[a-z]+-[a-z]+-\d{4}$/,
    why: 'a trial, by its folder',
  },
  {
    pages: /^(methods\/components|trials)\//,
    by: 'same',
    texts: /^south$/,
    why: 'what a grower says stands beside a container',
  },
  {
    pages: ofOneTrial,
    by: 'same',
    texts:
      /^(file|date|caption|alt|rule|where|reason|weighed_total\.value|containers T2|photos photos\/tank-t1\.png|photos\/tank-t1\.png|accepted container-total, T2|container-total)$/,
    why: 'keys of trial.yaml that a release changed',
  },
  { pages: ofOneTrial, by: 'same', texts: /^(Cultivar: [Fp]|F, Cultivar)$/, why: 'alike in both languages' },
  {
    pages: /^trials\//,
    by: 'same',
    texts: /^(leaves|tanks|later|week|out|Plants per|pot \d)$/,
    why: 'the end of what a grower wrote, on a line of its own in a figure',
  },
  { pages: ofOneTrial, by: 'words', texts: /^out$/, why: 'the end of what a grower wrote' },
  { pages: ofOneTrial, by: 'words', texts: /^where$/, why: 'a key of trial.yaml' },
  {
    pages: /^data\/./,
    by: 'words',
    texts: /\(CSV on the Web\)|«not provided»/,
    why: 'the name of a standard, and what another has files say',
  },
  {
    pages: /\/fact-sheet\/es\/$/,
    by: 'same',
    texts: every,
    why: 'a sheet in Spanish, which it is on a site in any language',
  },
  {
    pages: sheets,
    by: 'words',
    texts: /^(, p [=<] \d,\d+ ajustada\)|\(no probado\)|\(versión \d\.\d\.\d\))/,
    why: 'the author’s words going on behind those of a component',
  },
  {
    pages: /^data\/$/,
    by: 'words',
    texts: /^(texto, )?uno de: |\(CSV on the Web\)\.$/,
    why: 'words as files write them, and the name of a standard',
  },
  { pages: /^data\/$/, by: 'same', texts: /^"cultivar"$/, why: 'a word as files write it' },
  {
    pages: /^data\/checks\/$/,
    by: 'words',
    texts: /^Por ejemplo: .*("import Chart from|"per"|per de Value|not weighed|<Value of=)/,
    why: 'code of a fact sheet and values of a file, in a message that quotes them',
  },
];
